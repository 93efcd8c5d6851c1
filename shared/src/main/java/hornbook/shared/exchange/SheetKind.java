package hornbook.shared.exchange;

import java.util.List;
import java.util.Locale;

/** What a row of a person's own spreadsheet may be, and the fields it has. */
public enum SheetKind {
    DRAWERS(List.of("place", "label", "contents", "last_looked_through", "note"), List.of("place")),
    LOTS(
            List.of("drawer", "title", "dimensions", "thread", "fits", "count", "state", "material", "colour", "note"),
            List.of("drawer", "title")),
    HORNS(List.of("id", "make", "model", "instrument", "serial", "owner", "note"), List.of("instrument")),
    JOBS(List.of("id", "horn", "took_in", "done", "kind", "hours", "note"), List.of("horn", "took_in")),
    HOURS(List.of("job", "task", "hours", "date", "who"), List.of("job", "task", "hours", "date")),
    SUPPLIERS(List.of("name", "place", "days", "packs", "verdict", "why"), List.of("name"));

    private final List<String> fields;
    private final List<String> needed;

    SheetKind(List<String> fields, List<String> needed) {
        this.fields = fields;
        this.needed = needed;
    }

    public List<String> fields() {
        return fields;
    }

    /** Fields without which no row can be taken. */
    List<String> needed() {
        return needed;
    }

    /** As commands name it: {@code lots}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
