package hornbook.shared.measure;

import java.util.Optional;
import java.util.function.Function;

/**
 * What came of reading a text: a value, or one line that quotes the text and says what would be read. Never an
 * exception.
 */
public sealed interface Reading<T> {

    /** The text was understood. */
    record Read<T>(T value) implements Reading<T> {}

    /** The text was not understood; {@code reason} is one whole line for the person who wrote it. */
    record Refused<T>(String text, String reason) implements Reading<T> {}

    static <T> Reading<T> read(T value) {
        return new Read<>(value);
    }

    /** Refuses a text; the reason follows the quoted text: {@code refused("-2", "is negative")}. */
    static <T> Reading<T> refused(String text, String reason) {
        String shown = text.length() <= 60 ? text : text.substring(0, 60) + "…";
        return new Refused<>(text, "“" + shown.strip() + "” " + reason);
    }

    /** The value, if there is one. */
    default Optional<T> found() {
        return this instanceof Read<T>(T value) ? Optional.of(value) : Optional.empty();
    }

    /** Why there is no value; empty if there is one. */
    default Optional<String> refusal() {
        return this instanceof Refused<T> refused ? Optional.of(refused.reason()) : Optional.empty();
    }

    default <U> Reading<U> map(Function<? super T, ? extends U> change) {
        return switch (this) {
            case Read<T>(T value) -> new Read<>(change.apply(value));
            case Refused<T>(String text, String reason) -> new Refused<>(text, reason);
        };
    }

    default <U> Reading<U> then(Function<? super T, Reading<U>> next) {
        return switch (this) {
            case Read<T>(T value) -> next.apply(value);
            case Refused<T>(String text, String reason) -> new Refused<>(text, reason);
        };
    }

    /**
     * The value, for texts known to be good (constants, the shipped tables).
     *
     * @throws IllegalArgumentException with the reason, if the text was refused
     */
    default T orThrow() {
        return switch (this) {
            case Read<T>(T value) -> value;
            case Refused<T> refused -> throw new IllegalArgumentException(refused.reason());
        };
    }
}
