package hornbook.catalogue.entry;

import hornbook.catalogue.entry.Condition.Always;
import hornbook.catalogue.entry.Condition.And;
import hornbook.catalogue.entry.Condition.Between;
import hornbook.catalogue.entry.Condition.Is;
import hornbook.catalogue.entry.Condition.Of;
import hornbook.catalogue.entry.Condition.Or;
import java.math.BigDecimal;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Conditions as text: {@code &} and, {@code |} or, {@code &} binding tighter, round brackets where needed;
 * {@code trait=value}; {@code trait=low..high} for a number; {@code model=m-…}, {@code make=k-…};
 * {@code always}.
 */
public final class Conditions {
    private Conditions() {}

    /**
     * Reads a condition.
     *
     * @throws IllegalArgumentException with one line that names what was met and where
     */
    public static Condition read(String text) {
        return new ConditionReader(text).whole();
    }

    /** Writes a condition so that reading it gives an equal one. */
    public static String write(Condition condition) {
        return switch (condition) {
            case Or(var any) -> any.stream().map(Conditions::write).collect(Collectors.joining(" | "));
            case And(var all) -> all.stream().map(Conditions::inner).collect(Collectors.joining(" & "));
            case Is(var trait, var value) -> trait + "=" + value;
            case Between(var trait, var low, var high) -> trait + "=" + number(low) + ".." + number(high);
            case Of(var id) -> (id.startsWith("k-") ? "make=" : "model=") + id;
            case Always() -> "always";
        };
    }

    /** Every simple statement in a condition, left to right. */
    public static Stream<Condition> leaves(Condition condition) {
        return condition.parts().isEmpty()
                ? Stream.of(condition)
                : condition.parts().stream().flatMap(Conditions::leaves);
    }

    private static String inner(Condition condition) {
        return condition instanceof Or ? "(" + write(condition) + ")" : write(condition);
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
