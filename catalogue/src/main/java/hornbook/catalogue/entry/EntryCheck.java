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
        List<Problem> problems = new ArrayList<>(flaws(kind, file, text));
        if (problems.isEmpty()) {
            problems.addAll(remarks(reader.read(kind, text), file));
        }
        return problems;
    }

    /** The problems for which an entry is set aside. */
    public List<Problem> flaws(Kind kind, String file, String text) {
        List<Problem> problems = schema.check(kind, file, text);
        if (!problems.isEmpty()) {
            return problems;
        }
        try {
            return Figures.check(reader.read(kind, text), file);
        } catch (UnreadableEntry e) {
            return List.of(e.in(file));
        }
    }

    /** Ids and values in an entry that do not exist. */
    public List<Problem> remarks(Entry entry, String file) {
        return Links.check(entry, file, catalogue);
    }
}
