package hornbook.shared.shop;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A piece of work on a horn, from taking in to handing back. Minutes. */
public record Job(
        String id,
        String horn,
        String kind,
        LocalDate tookIn,
        @Nullable LocalDate promised,
        @Nullable LocalDate done,
        JobStatus status,
        String complaint,
        List<String> quirksMet,
        @Nullable Went went,
        String wentNote,
        @Nullable Integer quotedMin,
        @Nullable Integer minutesTotal,
        @Nullable String ownerCode,
        String note)
        implements ShopRecord {

    /** Keeps its own copy. */
    public Job {
        quirksMet = List.copyOf(quirksMet);
    }

    /** Agreed otherwise with the owner. */
    public Job agreed(JobStatus state, @Nullable LocalDate day, @Nullable Integer minutes, String remark) {
        return new Job(
                id,
                horn,
                kind,
                tookIn,
                day,
                done,
                state,
                complaint,
                quirksMet,
                went,
                wentNote,
                minutes,
                minutesTotal,
                ownerCode,
                remark);
    }

    /** With the quirks that bit on it. */
    public Job meeting(List<String> quirks) {
        return new Job(
                id,
                horn,
                kind,
                tookIn,
                promised,
                done,
                status,
                complaint,
                quirks,
                went,
                wentNote,
                quotedMin,
                minutesTotal,
                ownerCode,
                note);
    }

    /** Done, and how it went. */
    public Job closed(LocalDate day, Went grade, String sentence, int minutes) {
        return new Job(
                id,
                horn,
                kind,
                tookIn,
                promised,
                day,
                JobStatus.DONE,
                complaint,
                quirksMet,
                grade,
                sentence,
                quotedMin,
                minutes,
                ownerCode,
                note);
    }
}
