package hornbook.viewer.gauges;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Fitting;
import hornbook.shared.job.HornCard;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.Jobs;
import hornbook.shared.stock.LotCard;
import hornbook.shared.stock.Stock;
import hornbook.viewer.gauges.FitAsked.Field;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The fields of the fit pane as another record fills them: a lot its kind and sizes, a horn or a job its model. */
public final class FitFrom {
    private final Stock stock;
    private final Jobs jobs;
    private final Supplier<Catalogue> catalogue;

    public FitFrom(Stock stock, Jobs jobs, Supplier<Catalogue> catalogue) {
        this.stock = stock;
        this.jobs = jobs;
        this.catalogue = catalogue;
    }

    /** @param kind of the record, as {@code find} names it; what has no sizes and no horn fills nothing */
    FitAsked of(String kind, String id) {
        return switch (kind) {
            case "lot" -> stock.lot(id).map(this::lot).orElse(FitAsked.NOTHING);
            case "part", "supply" -> FitAsked.NOTHING.with(Field.KIND, title(id));
            case "model" -> FitAsked.NOTHING.with(Field.MODEL, id);
            case "horn" -> model(jobs.horn(id).map(HornCard::model));
            case "job" -> model(jobs.job(id).map(JobCard::model));
            default -> FitAsked.NOTHING;
        };
    }

    private static FitAsked model(Optional<String> model) {
        return FitAsked.NOTHING.with(Field.MODEL, model.orElse(""));
    }

    private String title(String id) {
        return catalogue.get().entry(id).map(Entry::title).orElse(id);
    }

    private FitAsked lot(LotCard lot) {
        Map<String, String> sizes = sizes(lot.dimensions());
        FitAsked asked = FitAsked.NOTHING
                .with(Field.KIND, title(lot.item()))
                .with(Field.THREAD, Objects.requireNonNullElse(lot.thread(), ""));
        asked = lot.fitsModels().size() == 1
                ? asked.with(Field.MODEL, lot.fitsModels().getFirst())
                : asked;
        Fitting fitting = catalogue.get().fitting(lot.item()).orElse(null);
        return fitting == null
                ? asked
                : asked.with(
                                Field.DIAMETER,
                                size(sizes, fitting.diameter(), fitting.works().get("diameter")))
                        .with(
                                Field.LENGTH,
                                size(sizes, fitting.length(), fitting.works().get("length")))
                        .with(
                                Field.BORE,
                                size(sizes, fitting.bore(), fitting.works().get("bore")));
    }

    /** A pad is asked for by its cup; the lot states its size. */
    private static String size(Map<String, String> sizes, @Nullable String chief, @Nullable String worked) {
        return Stream.of(chief, worked)
                .filter(Objects::nonNull)
                .flatMap(name -> Stream.ofNullable(sizes.get(name)))
                .findFirst()
                .orElse("");
    }

    private static Map<String, String> sizes(String dimensions) {
        Map<String, String> sizes = new LinkedHashMap<>();
        for (String each : dimensions.split(";", -1)) {
            int equals = each.indexOf('=');
            if (equals > 0) {
                sizes.put(
                        each.substring(0, equals).strip(),
                        each.substring(equals + 1).strip());
            }
        }
        return sizes;
    }
}
