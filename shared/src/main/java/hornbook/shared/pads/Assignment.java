package hornbook.shared.pads;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A pad or resonator for a cup. All measures in mm.
 *
 * @param diameter the cup's inside, or what the rim leaves for a resonator
 * @param ruled the size by the shop's rule
 * @param size the size taken
 * @param halfSteps size less ruled in half millimetres: -1, 0 or 1
 * @param drawer id of the drawer or place where it lies
 */
public record Assignment(
        @Nullable String job,
        String cup,
        BigDecimal diameter,
        BigDecimal ruled,
        BigDecimal size,
        int halfSteps,
        String lot,
        String title,
        String drawer,
        @Nullable BigDecimal thickness) {}
