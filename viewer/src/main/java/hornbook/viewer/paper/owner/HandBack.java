package hornbook.viewer.paper.owner;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a hand-back sheet says that no book holds.
 *
 * @param owner a code, only where it was asked for
 * @param notDone what was left out, by agreement or because it could not be done
 * @param faultsLeft known faults that stay, as agreed
 * @param billed what is to pay
 */
public record HandBack(
        @Nullable String owner,
        List<String> notDone,
        List<String> faultsLeft,
        @Nullable BigDecimal billed) {
    /** Keeps its own copies. */
    public HandBack {
        notDone = List.copyOf(notDone);
        faultsLeft = List.copyOf(faultsLeft);
    }
}
