package hornbook.shared.measure;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.HashMap;
import java.util.Map;

/**
 * Limits of threads: the printed table where we have it (the formulas of ISO 965-1 miss it for M3 and others), else
 * the standard's formula.
 */
public record LimitsTable(Map<String, ThreadLimits> printed) {

    public LimitsTable {
        printed = Map.copyOf(printed);
    }

    static LimitsTable load() {
        Map<String, ThreadLimits> rows = new HashMap<>();
        Table.rows("thread_limits_iso.csv", LimitsTable::metric).forEach(row -> rows.put(row.designation(), row));
        Table.rows("thread_limits_un.csv", LimitsTable::unified).forEach(row -> rows.put(row.designation(), row));
        return new LimitsTable(rows);
    }

    /** The limits of a thread; {@link ThreadLimits#provenance} says whether they are printed or by formula. */
    public ThreadLimits of(Thread thread) {
        ThreadLimits row = printed.get(thread.designation());
        return row == null ? byFormula(thread) : row;
    }

    static ThreadLimits byFormula(Thread thread) {
        return switch (thread.system()) {
            case ISO_METRIC -> MetricTolerance.limits(thread);
            case UNIFIED -> UnifiedTolerance.limits(thread);
            case BA -> BritishTolerance.association(thread);
            case WHITWORTH, BRITISH_FINE, MODEL_ENGINEER -> BritishTolerance.whitworth(thread);
            case LOEWENHERZ -> MetricTolerance.loewenherz(thread);
        };
    }

    private static ThreadLimits metric(NamedCsvRecord row) {
        return new ThreadLimits(
                row.getField("designation"),
                "6g/6H",
                Limits.ofMillimetres(row.getField("major_min_6g"), row.getField("major_max_6g")),
                Limits.ofMillimetres(row.getField("pd_min_6g"), row.getField("pd_max_6g")),
                Limits.ofMillimetres(row.getField("minor_min_6H"), row.getField("minor_max_6H")),
                Limits.ofMillimetres(row.getField("pd_min_6H"), row.getField("pd_max_6H")),
                Provenance.of(row));
    }

    private static ThreadLimits unified(NamedCsvRecord row) {
        return new ThreadLimits(
                row.getField("designation"),
                "2A/2B",
                Limits.ofInches(row.getField("major_min_2A"), row.getField("major_max_2A")),
                Limits.ofInches(row.getField("pd_min_2A"), row.getField("pd_max_2A")),
                Limits.ofInches(row.getField("minor_min_2B"), row.getField("minor_max_2B")),
                Limits.ofInches(row.getField("pd_min_2B"), row.getField("pd_max_2B")),
                Provenance.of(row));
    }
}
