package hornbook.catalogue.pack;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.EntryCheck;
import hornbook.catalogue.entry.EntryReader;
import hornbook.catalogue.entry.EntryWriter;
import hornbook.catalogue.entry.Problem;
import hornbook.catalogue.pack.Difference.What;
import hornbook.catalogue.pack.Made.LeftOut;
import hornbook.catalogue.pack.PackFile.Inside;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Makes packs of the shop's own entries, and takes those of others.
 *
 * <pre>{@code
 * new Packs(books, catalogue).make(Path.of("horns.zip"));
 * new Packs(books, catalogue).take(Path.of("theirs.zip"), false, true);
 * }</pre>
 */
public final class Packs {
    private final Books books;
    private final Catalogue catalogue;
    private final EntryReader reader = new EntryReader();
    private final EntryWriter writer = new EntryWriter();

    public Packs(Books books, Catalogue catalogue) {
        this.books = books;
        this.catalogue = catalogue;
    }

    /**
     * Writes all of the shop's own entries. What they learned from a job says so without its number; one that names a
     * customer is left out.
     *
     * @throws BadInput where the file cannot be written, or is there and is no zip file
     */
    public Made make(Path file) {
        PrivateWords never = new PrivateWords(books);
        Map<String, String> texts = new TreeMap<>();
        List<String> ids = new ArrayList<>();
        List<LeftOut> leftOut = new ArrayList<>();
        for (Entry entry : catalogue.all()) {
            if (catalogue.isOwn(entry.id())) {
                String text = writer.write(new Abroad(reader, writer).of(entry));
                Optional<String> why = never.in(text);
                if (why.isPresent()) {
                    leftOut.add(new LeftOut(entry.id(), why.get() + ": take that out of it, then make the pack again"));
                } else {
                    texts.put(PackFile.ENTRIES + entry.entryKind().word() + "/" + entry.id() + ".json", text);
                    ids.add(entry.id());
                }
            }
        }
        PackWriter.write(file, texts);
        return new Made(file.toString(), ids, leftOut);
    }

    /**
     * Takes a pack: all of it, or nothing where anything in it is wrong. What differs from an own entry of this shop
     * stays as it is here, unless {@code over}.
     *
     * @param over theirs replace ours where the two differ
     * @param dryRun only says what would be done
     * @throws BadInput in one line, for anything that is no pack or no entry
     */
    public Taken take(Path file, boolean over, boolean dryRun) {
        String name = String.valueOf(file.getFileName());
        Map<Inside, Entry> all = checked(name, PackFile.read(file));
        Catalogue after = catalogue.with(all.values());
        List<String> remarks = new ArrayList<>();
        List<Difference> differences = new ArrayList<>();
        Map<String, String> changes = new LinkedHashMap<>();
        EntryCheck check = new EntryCheck(after);
        all.forEach((inside, entry) -> {
            check.remarks(entry, path(entry)).forEach(remark -> remarks.add(PackFile.shown(remark.line())));
            Difference difference = difference(entry, over);
            differences.add(difference);
            if (difference.what() == What.NEW || difference.what() == What.CHANGED) {
                changes.put(path(entry), writer.write(entry));
            }
        });
        return new Taken(dryRun ? null : deed(name, changes), differences, remarks);
    }

    private @Nullable Deed deed(String name, Map<String, String> changes) {
        return changes.isEmpty()
                ? null
                : books.write("take pack " + PackFile.shown(name), w -> changes.forEach(w::entry));
    }

    private Map<Inside, Entry> checked(String name, List<Inside> inside) {
        EntryCheck check = new EntryCheck(catalogue);
        Map<Inside, Entry> entries = new LinkedHashMap<>();
        for (Inside each : inside) {
            String path = each.kind().word() + "/" + each.id() + ".json";
            List<Problem> flaws = check.flaws(each.kind(), path, each.text());
            if (!flaws.isEmpty()) {
                throw new BadInput(name + ", " + PackFile.shown(flaws.getFirst().line()) + "; nothing was taken");
            }
            Entry entry = reader.read(each.kind(), each.text());
            Entry here = catalogue.entry(entry.id()).orElse(null);
            boolean taken = here != null && here.entryKind() != entry.entryKind();
            if (taken || !entry.id().equals(each.id())) {
                throw new BadInput(name + ", " + PackFile.shown(path) + ": its id is not that of its file, or is"
                        + " another kind's here; nothing was taken: ask for another pack");
            }
            entries.put(each, entry);
        }
        if (entries.isEmpty()) {
            throw new BadInput(name + " holds no entries: nothing was taken");
        }
        return entries;
    }

    private Difference difference(Entry theirs, boolean over) {
        Entry here = catalogue.entry(theirs.id()).orElse(null);
        List<Difference.Field> fields =
                here == null ? List.of() : new Fields(writer.tree(here), writer.tree(theirs)).differing();
        What what = here == null
                ? What.NEW
                : fields.isEmpty() ? What.SAME : over || !catalogue.isOwn(here.id()) ? What.CHANGED : What.KEPT;
        return new Difference(theirs.id(), theirs.entryKind().word(), PackFile.shown(theirs.title()), what, fields);
    }

    private static String path(Entry entry) {
        return entry.entryKind().word() + "/" + entry.id() + ".json";
    }
}
