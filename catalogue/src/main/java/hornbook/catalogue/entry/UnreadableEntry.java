package hornbook.catalogue.entry;

/** A text that is not an entry of its kind; says at which field, why, and what to do. */
public final class UnreadableEntry extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String field;
    private final String why;
    private final String whatToDo;

    UnreadableEntry(String field, String why, String whatToDo) {
        super((field.isEmpty() ? "" : field + ": ") + why + "; " + whatToDo);
        this.field = field;
        this.why = why;
        this.whatToDo = whatToDo;
    }

    /** Path of the field, names and list numbers joined by dots; empty where it is the whole text. */
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

    /** The same, seen from one field further out. */
    UnreadableEntry below(String name) {
        return new UnreadableEntry(field.isEmpty() ? name : name + "." + field, why, whatToDo);
    }
}
