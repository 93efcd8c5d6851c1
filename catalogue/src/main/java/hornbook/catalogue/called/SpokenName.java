package hornbook.catalogue.called;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** A name as somebody says it: without marks, and perhaps without the half of it. */
public record SpokenName(String typed) {
    private static final Pattern MARKS = Pattern.compile("[^\\p{L}\\p{N}#.]+");

    /** Small letters, one space between words, no marks; a flat is a b, a sharp #. */
    public static String plain(String name) {
        String letters = name.toLowerCase(Locale.ROOT).replace("♭", "b").replace("♯", "#");
        return MARKS.matcher(letters).replaceAll(" ").strip();
    }

    /** Whether each word said begins a word of the full name. */
    public boolean begins(String name) {
        String words = " " + plain(name);
        return !plain(typed).isEmpty()
                && Arrays.stream(plain(typed).split(" ", -1)).allMatch(word -> words.contains(" " + word));
    }

    /** The names, for a person to choose from. */
    public static String oneOf(List<String> names) {
        return names.size() < 2
                ? String.join("", names)
                : String.join(", ", names.subList(0, names.size() - 1)) + " or " + names.getLast();
    }
}
