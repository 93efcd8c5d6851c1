package hornbook.shared.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A job with all that was written down about it.
 *
 * @param minutes clocked so far, all tasks together
 */
public record JobCard(
        String id,
        String horn,
        String model,
        String instrument,
        String serial,
        @Nullable String soldAs,
        String kind,
        String status,
        LocalDate tookIn,
        @Nullable LocalDate promised,
        @Nullable LocalDate done,
        String complaint,
        @Nullable String went,
        String wentNote,
        @Nullable Integer quotedMin,
        int minutes,
        List<String> quirksMet,
        String note,
        List<TaskLine> tasks,
        List<FindingLine> findings,
        List<PartLine> parts,
        List<PadLine> pads) {

    /** Minutes on a task; one clocked on several days is added up. */
    public record TaskLine(String task, int count, int minutes, String who) {}

    /** A look or reading, as read. */
    public record FindingLine(
            LocalDate day,
            String what,
            String where,
            String value,
            String unit,
            String asFoundOrLeft,
            @Nullable String tool,
            String note) {}

    /** What went in. */
    public record PartLine(String lot, String title, int qty, String whatFor) {}

    /** A pad that went into a cup, mm. */
    public record PadLine(
            String cup,
            @Nullable BigDecimal measuredMm,
            BigDecimal sizeMm,
            @Nullable BigDecimal thicknessMm,
            @Nullable String lot,
            String note) {}
}
