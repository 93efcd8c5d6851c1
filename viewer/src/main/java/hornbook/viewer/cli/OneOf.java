package hornbook.viewer.cli;

import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitValue;
import hornbook.shared.shop.BadInput;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A word on the line that must be one of a few. */
final class OneOf<T> {
    private final List<T> known;
    private final Function<T, String> word;

    OneOf(List<T> known, Function<T, String> word) {
        this.known = known;
        this.word = word;
    }

    /** Of constants: their names in small letters, joined by hyphens. */
    @SafeVarargs
    static <E extends Enum<E>> OneOf<E> of(E... constants) {
        return new OneOf<>(
                List.of(constants),
                constant -> constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** @throws BadInput where the trait has no such value */
    static void valueOf(@Nullable Trait trait, String text, String refused) {
        if (trait != null) {
            new OneOf<>(trait.values(), TraitValue::id).read(text, refused);
        }
    }

    /**
     * The one meant.
     *
     * @param refused what the word is not: {@code is no grade}
     * @throws BadInput where it is none of them; says which there are
     */
    T read(String text, String refused) {
        return known.stream()
                .filter(one -> word.apply(one).equalsIgnoreCase(text))
                .findFirst()
                .orElseThrow(() -> new BadInput("“" + text + "” " + refused + ": write one of "
                        + known.stream().map(word).collect(Collectors.joining(", "))));
    }
}
