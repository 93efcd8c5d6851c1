package hornbook.catalogue.entry;

import java.util.ArrayList;
import java.util.List;

/**
 * Checks an entry before it is taken: by import, by an editor, from another shop's pack. First the schema of its
 * kind, then what a schema cannot say: shares that add up, conditions that parse, ids that exist.
 */
public final class EntryCheck {
    private final EntrySchema schema = new EntrySchema();
    private final EntryReader reader = new EntryReader();
    private final Catalogue catalogue;

    /**
     * A check against the entries at hand.
     *
     * @param catalogue the entries to which ids may point
     */
    public EntryCheck(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * What is wrong with an entry. Where none of the problems sets it aside, it may be taken; an id that does not
     * exist is a remark only, for what it names may come later.
     *
     * @param kind what the text ought to be
     * @param file the name under which problems are told
     * @param text the entry as JSON
     * @return problems in the order of the fields; none where all is well
     */
    public List<Problem> check(Kind kind, String file, String text) {
        List<Problem> problems = new ArrayList<>(schema.check(kind, file, text));
        if (!problems.isEmpty()) {
            return problems;
        }
        try {
            Entry entry = reader.read(kind, text);
            problems.addAll(Figures.check(entry, file));
            problems.addAll(Links.check(entry, file, catalogue));
        } catch (UnreadableEntry e) {
            problems.add(e.in(file));
        }
        return problems;
    }
}
