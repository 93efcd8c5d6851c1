package hornbook.shared.shop;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A look or a reading on a job: a trait, a measure, a fault or a quirk; readings are as read. */
public record Finding(
        String id,
        String job,
        String horn,
        LocalDate date,
        String what,
        String where,
        String value,
        String unit,
        String asFoundOrLeft,
        @Nullable String tool,
        String note)
        implements ShopRecord {}
