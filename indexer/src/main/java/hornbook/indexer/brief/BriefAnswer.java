package hornbook.indexer.brief;

import hornbook.catalogue.entry.KeyMap;
import hornbook.catalogue.entry.TakingDown;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The brief.
 *
 * @param says what horn it is, in a line
 * @param model the likeliest model, where it is more likely than not
 * @param title its name
 * @param stops names of the quirks that can ruin the horn or hurt somebody
 * @param quirks each once: stops first, then by stage, within a stage by what is at stake times relevance
 * @param fetch what to bring
 * @param threads what threads to expect, by use
 * @param map what each key turns on
 * @param takingDown order of taking down
 * @param takingDownOf the model it was written down on, where that is another instrument of the pattern
 * @param pads size by cup, mm
 * @param keyHeights opening by cup, mm
 * @param jobs past jobs, nearest kin first, newest first within
 * @param cautions how what is fetched can hurt
 * @param mayNot what may not be used on this finish
 */
public record BriefAnswer(
        String says,
        @Nullable String model,
        @Nullable String title,
        List<String> stops,
        List<QuirkLine> quirks,
        List<Fetch> fetch,
        List<ThreadLine> threads,
        List<KeyMap> map,
        List<TakingDown> takingDown,
        @Nullable String takingDownOf,
        Map<String, Double> pads,
        Map<String, Double> keyHeights,
        List<PastJob> jobs,
        List<CautionLine> cautions,
        List<MayNot> mayNot) {
    /** Keeps its own copies. */
    public BriefAnswer {
        stops = List.copyOf(stops);
        quirks = List.copyOf(quirks);
        fetch = List.copyOf(fetch);
        threads = List.copyOf(threads);
        map = List.copyOf(map);
        takingDown = List.copyOf(takingDown);
        pads = Collections.unmodifiableMap(new LinkedHashMap<>(pads));
        keyHeights = Collections.unmodifiableMap(new LinkedHashMap<>(keyHeights));
        jobs = List.copyOf(jobs);
        cautions = List.copyOf(cautions);
        mayNot = List.copyOf(mayNot);
    }
}
