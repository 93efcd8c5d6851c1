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
        List<PlannedLine> planned,
        List<TaskLine> tasks,
        List<FindingLine> findings,
        List<PartLine> parts,
        List<PadLine> pads,
        Standing standing,
        List<ConsentLine> consents,
        List<DownLine> takenDown,
        List<PhotoLine> photos) {

    /** Work that is planned: a task, and how many cups, keys, screws. */
    public record PlannedLine(String task, int count) {}

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

    /** The owner's yes: to what, who said it, when. */
    public record ConsentLine(LocalDate day, String what, String saidBy, String note) {}

    /** A step of taking down, as it went. */
    public record DownLine(int step, String piece, String how, String reason) {}

    /**
     * A photo.
     *
     * @param file its name below the shop's folder of photos
     */
    public record PhotoLine(String id, String file, String word) {}

    /** A pad that went into a cup, mm. */
    public record PadLine(
            String cup,
            @Nullable BigDecimal measuredMm,
            BigDecimal sizeMm,
            @Nullable BigDecimal thicknessMm,
            @Nullable String lot,
            String note) {}
}
