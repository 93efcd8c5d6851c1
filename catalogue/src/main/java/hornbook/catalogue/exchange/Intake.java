package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.EntryCheck;
import hornbook.catalogue.entry.EntryWriter;
import hornbook.catalogue.entry.Problem;
import hornbook.shared.exchange.EntryFile;
import hornbook.shared.exchange.KnowledgeFiles.Incoming;
import hornbook.shared.exchange.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What one reading gathers: entries by id, rows refused, remarks, and how many rows there were. */
final class Intake {
    private final Catalogue catalogue;
    private final EntryCheck check;
    private final EntryWriter writer = new EntryWriter();
    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final List<Refusal> refused = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final Map<String, List<String>> order = new LinkedHashMap<>();
    private int rows;

    Intake(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.check = new EntryCheck(catalogue);
    }

    /** The entries as they were before this reading. */
    Catalogue before() {
        return catalogue;
    }

    /** The entry of that id, as read now or else as it was. */
    Optional<Entry> entry(String id) {
        Entry read = entries.get(id);
        return read == null ? catalogue.entry(id) : Optional.of(read);
    }

    void count() {
        rows++;
    }

    void count(int more) {
        rows += more;
    }

    void refuse(Refusal refusal) {
        refused.add(refusal);
    }

    void remark(String remark) {
        remarks.add(remark);
    }

    /** Takes an entry made from a row, or refuses the row for what the check finds. */
    void take(Entry entry, Place place) {
        if (entries.containsKey(entry.id())) {
            refuse(place.refuse("id", entry.id() + " stands in an earlier row: keep one of them"));
            return;
        }
        Optional<Entry> other = catalogue.entry(entry.id());
        if (other.isPresent() && other.get().entryKind() != entry.entryKind()) {
            String kind = other.get().entryKind().word();
            refuse(place.refuse("id", entry.id() + " is the id of a " + kind + ": give it another"));
            return;
        }
        List<Problem> problems = check.flaws(entry.entryKind(), place.file(), writer.write(entry));
        if (problems.isEmpty()) {
            entries.put(entry.id(), entry);
            mention(entry.id(), place.file());
        } else {
            refuse(place, problems.getFirst());
        }
    }

    /** The file speaks of this entry, here in its order. */
    void mention(String id, String file) {
        List<String> ids = order.computeIfAbsent(file, _ -> new ArrayList<>());
        if (!ids.contains(id)) {
            ids.add(id);
        }
    }

    /** Puts a changed entry in the place of the one read before. */
    void replace(Entry entry) {
        entries.put(entry.id(), entry);
    }

    void refuse(Place place, Problem problem) {
        refuse(place.refuse(problem.field(), problem.why() + ": " + problem.whatToDo()));
    }

    Incoming incoming() {
        EntryCheck after = new EntryCheck(catalogue.with(entries.values()));
        List<EntryFile> files = new ArrayList<>();
        for (Entry entry : entries.values()) {
            String path = entry.entryKind().word() + "/" + entry.id() + ".json";
            files.add(new EntryFile(path, writer.write(entry)));
            after.remarks(entry, path).forEach(p -> remark(p.line()));
        }
        return new Incoming(rows, files, refused, remarks, order);
    }
}
