package hornbook.catalogue.entry;

import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;

/** A file that is not an entry of its kind. */
public final class UnreadableEntry extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String field;
    private final String why;
    private final String whatToDo;

    UnreadableEntry(String field, String why, String whatToDo) {
        super((field.isEmpty() ? "" : field + ": ") + why);
        this.field = field;
        this.why = why;
        this.whatToDo = whatToDo;
    }

    /** Path of the field; empty where it is the whole file. */
    public String field() {
        return field;
    }

    /** What is wrong with it. */
    public String why() {
        return why;
    }

    /** As a problem of that file. */
    public Problem in(String file) {
        return new Problem(file, field, why, whatToDo, true);
    }

    static UnreadableEntry from(JacksonException e) {
        String place = e.getLocation() == null || e.getLocation().getLineNr() < 1
                ? ""
                : " (line " + e.getLocation().getLineNr() + ")";
        if (e instanceof UnrecognizedPropertyException unknown) {
            return new UnreadableEntry(path(e), "is not a field of this kind" + place, nearest(unknown));
        }
        String first = e.getOriginalMessage().lines().findFirst().orElse("not readable");
        return new UnreadableEntry(path(e), first + place, "write it as the other entries of the kind have it");
    }

    private static String path(JacksonException e) {
        return e.getPath().stream()
                .map(r -> r.getPropertyName() != null ? r.getPropertyName() : Integer.toString(r.getIndex() + 1))
                .collect(Collectors.joining("."));
    }

    private static String nearest(UnrecognizedPropertyException e) {
        var known = e.getKnownPropertyIds() == null ? java.util.List.of() : e.getKnownPropertyIds();
        return Nearest.of(
                        e.getPropertyName(),
                        known.stream().map(Object::toString).toList())
                .map(n -> "perhaps " + n + " is meant")
                .orElse("take it out");
    }
}
