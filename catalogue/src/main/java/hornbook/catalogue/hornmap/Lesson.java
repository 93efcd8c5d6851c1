package hornbook.catalogue.hornmap;

import java.util.List;

/**
 * What a job learned of a horn that its model's entry does not say yet.
 *
 * @param model id of the entry
 * @param says each piece in a line, for a person to judge
 */
public record Lesson(String job, String model, String title, List<String> says) {
    /** Keeps its own copy. */
    public Lesson {
        says = List.copyOf(says);
    }
}
