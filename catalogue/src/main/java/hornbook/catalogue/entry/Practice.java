package hornbook.catalogue.entry;

import java.util.List;

/**
 * How something is usually done: an order of work, a rule, an arrangement.
 *
 * @param topic what it belongs to
 * @param points in order
 * @param stages ids of stages where it is wanted
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Practice(
        String id, String title, String topic, List<String> points, List<String> stages, String source, String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public Practice {
        points = List.copyOf(points);
        stages = List.copyOf(stages);
    }

    static Practice from(Fields in) {
        return new Practice(
                in.text("id"),
                in.text("title"),
                in.text("topic"),
                in.texts("points"),
                in.texts("stages"),
                in.text("source"),
                in.text("sureness"));
    }
}
