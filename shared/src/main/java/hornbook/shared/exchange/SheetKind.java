package hornbook.shared.exchange;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What a row of a person's own spreadsheet may be, the fields it has, and how people head their columns. */
public enum SheetKind {
    DRAWERS(List.of("place", "label", "contents", "last_looked_through", "note"), List.of("place")),
    LOTS(
            List.of("drawer", "title", "dimensions", "thread", "fits", "count", "state", "material", "colour", "note"),
            List.of("drawer", "title")),
    HORNS(List.of("id", "make", "model", "instrument", "serial", "owner", "note"), List.of("instrument")),
    JOBS(List.of("id", "horn", "took_in", "done", "kind", "hours", "note"), List.of("horn", "took_in")),
    HOURS(List.of("job", "task", "hours", "date", "who"), List.of("job", "task", "hours", "date"));

    /** Common practice: headings as met on shop lists, folded to small letters and single spaces. */
    private static final Map<String, List<String>> HEADINGS = Map.ofEntries(
            Map.entry("place", List.of("drawer", "location", "where", "box", "bin", "position", "drawer no")),
            Map.entry("drawer", List.of("place", "location", "where", "box", "bin", "drawer no")),
            Map.entry("label", List.of("label as written", "written", "title", "name")),
            Map.entry("contents", List.of("content", "what is in it", "contents as found", "inside")),
            Map.entry(
                    "last_looked_through", List.of("last looked through", "looked through", "last checked", "checked")),
            Map.entry("title", List.of("part", "item", "description", "name", "what")),
            Map.entry("dimensions", List.of("size", "sizes", "dimension", "measurements", "measures")),
            Map.entry("thread", List.of("threads", "screw thread", "tap")),
            Map.entry("fits", List.of("for", "make", "model", "fits models", "fits makes", "horn")),
            Map.entry("count", List.of("qty", "quantity", "pieces", "pcs", "number", "how many", "stock", "on hand")),
            Map.entry("state", List.of("condition", "new or used")),
            Map.entry("material", List.of("metal", "made of")),
            Map.entry("colour", List.of("color", "finish")),
            Map.entry("note", List.of("notes", "remark", "remarks", "comment", "comments")),
            Map.entry("id", List.of("no", "number", "no.", "#", "nr", "horn no", "job no", "job number")),
            Map.entry("make", List.of("maker", "brand")),
            Map.entry("model", List.of("type")),
            Map.entry("instrument", List.of("kind of horn", "voice", "horn")),
            Map.entry("serial", List.of("serial no", "serial number", "s/n", "sn")),
            Map.entry("owner", List.of("customer", "client", "player", "name", "belongs to")),
            Map.entry("horn", List.of("instrument", "horn no", "horn id")),
            Map.entry("took_in", List.of("took in", "taken in", "date in", "in", "received", "date")),
            Map.entry("done", List.of("finished", "date out", "out", "completed", "returned")),
            Map.entry("kind", List.of("work", "kind of work", "job", "what")),
            Map.entry("hours", List.of("time", "hrs", "h", "duration")),
            Map.entry("job", List.of("job no", "job id", "job number", "ticket", "no")),
            Map.entry("task", List.of("work", "what", "activity")),
            Map.entry("date", List.of("day", "on", "when")),
            Map.entry("who", List.of("by", "worker", "initials", "name")));

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

    /** Headings that mean this field. */
    static List<String> headings(String field) {
        return HEADINGS.getOrDefault(field, List.of());
    }

    /** As commands name it: {@code lots}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
