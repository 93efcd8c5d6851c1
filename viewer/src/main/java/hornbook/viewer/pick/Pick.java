package hornbook.viewer.pick;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A choice.
 *
 * @param title what is chosen, and what for
 * @param options the likeliest first: the first nine have a digit
 * @param numbered whether a digit takes its option; where numbers are what one searches by, they are typed
 * @param searched whether the options are what a search found for the letters typed, and need no narrowing
 * @param trouble why the last choice was refused
 */
public record Pick(
        String title,
        List<Option> options,
        boolean numbered,
        boolean searched,
        @Nullable String trouble) {
    /** Keeps its own copy. */
    public Pick {
        options = List.copyOf(options);
    }

    public Pick(String title, List<Option> options) {
        this(title, options, true, false, null);
    }

    /** Where the letters typed may be a number: no digit takes anything. */
    public static Pick byWords(String title, List<Option> options) {
        return new Pick(title, options, false, false, null);
    }

    public Pick troubled(String why) {
        return new Pick(title, options, numbered, searched, why);
    }

    /** What a search found, under the same title. */
    public Pick found(List<Option> others) {
        return new Pick(title, others, numbered, true, null);
    }
}
