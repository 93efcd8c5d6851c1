package hornbook.shared.job;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A pad goes into a cup, from a lot where it is known. All mm.
 *
 * @param again said that another goes where one went in before
 */
public record PadFitted(
        String cup,
        @Nullable BigDecimal measured,
        BigDecimal size,
        @Nullable BigDecimal thickness,
        @Nullable String lot,
        String note,
        boolean again) {}
