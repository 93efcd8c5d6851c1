package hornbook.viewer.ask;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is asked.
 *
 * @param title what will be done
 * @param fields in the order in which they are gone through
 * @param doIt the word on the button
 * @param trouble why the answers given cannot be used; null where nothing is wrong yet
 */
public record Ask(
        String title,
        List<Field> fields,
        String doIt,
        @Nullable String trouble) {
    public Ask {
        fields = List.copyOf(fields);
    }

    public Ask(String title, String doIt, Field... fields) {
        this(title, List.of(fields), doIt, null);
    }

    public Ask troubled(String why) {
        return new Ask(title, fields, doIt, why);
    }

    /** With something else standing in a field. */
    public Ask holding(String field, String text) {
        return new Ask(
                title,
                fields.stream()
                        .map(f -> f.name().equals(field) ? f.holding(text) : f)
                        .toList(),
                doIt,
                trouble);
    }
}
