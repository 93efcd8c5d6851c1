package hornbook.catalogue.entry;

import java.util.List;

/**
 * Reads entries from JSON: names in snake_case, what is absent has no key, unknown names are refused.
 *
 * <p>Each record takes its own fields, without reflection: binding by name and type took twice as long when a
 * program has just started, and every command starts by reading the catalogue.
 */
public final class EntryReader {
    private final JsonValues values = new JsonValues();

    /**
     * Reads one entry.
     *
     * @param kind which record to make
     * @param text one JSON object
     * @throws UnreadableEntry naming the field and what is wrong with it
     */
    public Entry read(Kind kind, String text) {
        return FieldValue.fields("", values.read(text)).make(kind::read);
    }

    /** Reads a shipped file: one JSON array, an entry an element. */
    List<Entry> readAll(Kind kind, byte[] file) {
        return FieldValue.list("", values.read(file)).stream()
                .map(value -> FieldValue.fields("", value).make(kind::read))
                .toList();
    }
}
