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
        implements ShopRecord {}
