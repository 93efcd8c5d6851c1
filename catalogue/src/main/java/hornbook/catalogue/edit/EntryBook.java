package hornbook.catalogue.edit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.EntryCheck;
import hornbook.catalogue.entry.EntryReader;
import hornbook.catalogue.entry.EntryWriter;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Problem;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.store.Books;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Writes the shop's own entries, each as one deed that can be undone. An own entry may be one that nobody shipped, or a
 * copy that stands over a shipped one.
 */
public final class EntryBook {
    private static final String GIVEN = "the entry";
    private static final List<String> ORIGIN = List.of("source", "sureness");

    private final Catalogue catalogue;
    private final Books books;
    private final EntryCheck check;

    /** A book over the entries as they are now; made anew after a change. */
    public EntryBook(Catalogue catalogue, Books books) {
        this.catalogue = catalogue;
        this.books = books;
        this.check = new EntryCheck(catalogue);
    }

    /** What is known now. */
    public Catalogue catalogue() {
        return catalogue;
    }

    /** Whether a shipped entry lies under the own one of that id. */
    public boolean shipped(String id) {
        return catalogue.entry(id).isPresent()
                && (!catalogue.isOwn(id) || Catalogue.shipped().entry(id).isPresent());
    }

    /** An id for a new entry, out of its title. */
    public String idFor(Kind kind, String title) {
        return Ids.of(kind, title, catalogue);
    }

    /** The shop's jobs from which something may have been learned, the newest first. */
    public List<Choice> jobs() {
        return books.all(Job.class).stream()
                .sorted(Comparator.comparing(Job::id).reversed())
                .map(job -> new Choice(job.id(), job.kind() + ", " + model(job)))
                .toList();
    }

    private String model(Job job) {
        return books.find(Horn.class, job.horn())
                .map(horn -> catalogue.entry(horn.model()).map(Entry::title).orElse(horn.model()))
                .orElse(job.horn());
    }

    /** What saving would do. */
    public Proposal propose(Draft draft) {
        return propose(draft.kind(), draft.json());
    }

    /** As {@link #propose(Draft)}, of a text that may be no entry at all. */
    public Proposal propose(Kind kind, String text) {
        List<Problem> problems = new ArrayList<>(check.check(kind, GIVEN, text));
        JsonNode after = tree(text);
        String id = after.path("id").asString("");
        Optional<Entry> there = catalogue.entry(id);
        there.filter(other -> other.entryKind() != kind)
                .ifPresent(other -> problems.add(new Problem(
                        GIVEN,
                        "id",
                        "is also the id of a " + other.entryKind().word() + ", " + other.title(),
                        "give it an id of its own",
                        true)));
        boolean flawed = problems.stream().anyMatch(Problem::setAside);
        if (flawed) {
            problems.addAll(remarks(kind, text));
        }
        JsonNode now = flawed ? after : new EntryWriter().tree(new EntryReader().read(kind, text));
        List<Difference> changes = Differences.between(
                there.map(new EntryWriter()::tree).orElseGet(JsonNodeFactory.instance::objectNode), now);
        return new Proposal(kind.word(), id, standing(id), changes, problems, !flawed && !changes.isEmpty());
    }

    /** Where only its source is still to be told, what it names can be looked at already. */
    private List<Problem> remarks(Kind kind, String text) {
        JsonNode tree = tree(text);
        if (!(tree instanceof ObjectNode object)) {
            return List.of();
        }
        ObjectNode told = object.deepCopy();
        ORIGIN.forEach(field -> told.put(field, "told later"));
        return check.check(kind, GIVEN, told.toString()).stream()
                .filter(problem -> !problem.setAside())
                .toList();
    }

    private Standing standing(String id) {
        if (catalogue.entry(id).isEmpty()) {
            return Standing.NEW;
        }
        return catalogue.isOwn(id) ? Standing.OWN : Standing.OVER_SHIPPED;
    }

    private static JsonNode tree(String text) {
        try {
            return JsonMapper.shared().readTree(text);
        } catch (JacksonException e) {
            return JsonNodeFactory.instance.objectNode();
        }
    }

    /** Saves an entry as the shop's own. */
    public Entry put(Kind kind, String text) {
        return put(kind, text, null);
    }

    /**
     * Saves an entry as the shop's own.
     *
     * @param mended path of the file that it mends, taken away where it bears another name
     * @throws BadInput where it may not be saved, naming the first field that is wrong
     */
    public Entry put(Kind kind, String text, @Nullable String mended) {
        Proposal proposal = propose(kind, text);
        proposal.problems().stream().filter(Problem::setAside).findFirst().ifPresent(problem -> {
            throw new BadInput(problem.line());
        });
        if (!proposal.fit() && mended == null) {
            throw new BadInput("entry " + proposal.id() + " says that already: there is nothing to save");
        }
        Entry entry = new EntryReader().read(kind, text);
        String path = path(entry);
        books.write(deed(entry, proposal.standing()), writing -> {
            writing.entry(path, new EntryWriter().write(entry));
            if (mended != null && !mended.equals(path)) {
                writing.entry(mended, null);
            }
        });
        return entry;
    }

    private static String deed(Entry entry, Standing standing) {
        String what = entry.entryKind().word() + " “" + entry.title() + "”";
        return switch (standing) {
            case NEW -> what + " written down";
            case OVER_SHIPPED -> "own copy of " + what;
            case OWN -> what + " changed";
        };
    }

    /**
     * Takes an own entry away; where it stood over a shipped one, that one holds again.
     *
     * @return the shipped entry that holds again
     * @throws BadInput where there is no own entry of that id
     */
    public Optional<Entry> takeAway(String id) {
        Entry own = catalogue
                .entry(id)
                .orElseThrow(
                        () -> new BadInput("there is no entry “" + id + "”: “hornbook find " + id + "” looks it up"));
        if (!catalogue.isOwn(id)) {
            throw new BadInput("“" + id + "” is shipped and cannot be taken away: an own copy can say otherwise");
        }
        Optional<Entry> under = Catalogue.shipped().entry(id);
        String what = own.entryKind().word() + " “" + own.title() + "”";
        books.write(
                under.isPresent() ? "back to the shipped " + what : what + " taken away",
                writing -> writing.entry(path(own), null));
        return under;
    }

    /** What names an entry and would name nothing without it: titles of entries, and how many horns. */
    public List<String> namedBy(String id) {
        List<String> names =
                new ArrayList<>(catalogue.naming(id).stream().map(Entry::title).toList());
        int horns = books.where(Horn.class, "model", id).size();
        if (horns > 0) {
            names.add(horns == 1 ? "one horn of this shop" : horns + " horns of this shop");
        }
        return names;
    }

    /** Own files that are not used because of what is wrong with them. */
    public List<Problem> broken() {
        return catalogue.problems().stream().filter(Problem::setAside).toList();
    }

    /** An own file that was set aside, as far as it can be read. */
    public Optional<Mend> mend(String file) {
        Optional<Kind> kind = Kind.named(file.replaceFirst("/.*", ""));
        try {
            byte[] content =
                    Files.readAllBytes(books.folder().resolve("entries").resolve(file));
            JsonNode tree = tree(new String(content, StandardCharsets.UTF_8));
            return kind.filter(known -> tree.isObject() && !tree.isEmpty())
                    .map(known -> new Mend(file, Draft.of(known, tree)));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    /** Takes an own file away that was set aside; undo brings it back as it was. */
    public void takeAwayFile(String file) {
        books.write("broken file " + file + " taken away", writing -> writing.entry(file, null));
    }

    private static String path(Entry entry) {
        return entry.entryKind().word() + "/" + entry.id() + ".json";
    }
}
