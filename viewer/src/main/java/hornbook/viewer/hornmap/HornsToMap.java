package hornbook.viewer.hornmap;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.hornmap.HornMap;
import hornbook.catalogue.hornmap.HornMaps;
import hornbook.shared.job.Jobs;
import hornbook.shared.job.OnBench;
import hornbook.shared.pads.Pads;
import hornbook.shared.shop.BadInput;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What the map asks: which horns are on the bench, what is known of one, which pads the tray has for it. */
public final class HornsToMap {
    private final Supplier<Catalogue> catalogue;
    private final Supplier<HornMaps> maps;
    private final Jobs jobs;
    private final Pads pads;

    /** @param maps asked each time, as the shop's own entries may have changed */
    public HornsToMap(Supplier<Catalogue> catalogue, Supplier<HornMaps> maps, Jobs jobs, Pads pads) {
        this.catalogue = catalogue;
        this.maps = maps;
        this.jobs = jobs;
        this.pads = pads;
    }

    Optional<HornMap> map(String horn) {
        return maps.get().horn(horn);
    }

    /** Horns on the bench, their models by name. */
    List<OnBench> bench() {
        return jobs.onBench().stream().map(on -> on.calling(this::title)).toList();
    }

    private String title(String id) {
        return catalogue.get().entry(id).map(Entry::title).orElse(id);
    }

    /** Pads for the cups of a job that were measured and have none yet. */
    Tray pads(String job) {
        try {
            return Tray.of(pads.forJobs(List.of(job), false));
        } catch (BadInput nothingMeasured) {
            return Tray.NOTHING;
        }
    }
}
