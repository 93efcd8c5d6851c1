package hornbook.viewer.cli;

import hornbook.catalogue.edit.EntryBook;
import hornbook.catalogue.edit.Proposal;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Problem;
import hornbook.shared.shop.BadInput;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Writes an entry. */
@Command(
        name = "put",
        header = "Says what an entry from a file would change; with --save, writes it as the shop's own.",
        footer = "hornbook entry put q-red-rot.json")
final class EntryPutCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "JSON, as “entry show --json” gives it, or the entry alone.")
    Path file = Path.of("");

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            description = "Of an entry that is new and stands alone in its file.")
    @Nullable
    String kind;

    @Option(names = "--save", description = "Save it; otherwise nothing is written.")
    boolean save;

    private final Frame frame;

    EntryPutCommand(Frame frame) {
        this.frame = frame;
    }

    /** A proposal, and whether it was saved. */
    record Put(boolean saved, Proposal proposal) {}

    @Override
    public Integer call() {
        JsonNode given = read();
        return save
                ? frame.writing(workshop -> put(workshop.entryBook(), given))
                : frame.reading(workshop -> put(workshop.entryBook(), given));
    }

    private int put(EntryBook book, JsonNode given) {
        JsonNode entry = given.path("entry").isObject() ? given.path("entry") : given;
        Kind of = kind(book, given, entry);
        Proposal proposal = book.propose(of, entry.toString());
        proposal.problems().stream().filter(Problem::setAside).findFirst().ifPresent(problem -> {
            throw new BadInput(file + ": " + problem.field() + " " + problem.why() + "; " + problem.whatToDo());
        });
        if (save) {
            book.put(of, entry.toString());
        }
        Put answer = new Put(save, proposal);
        return proposal.fit()
                ? frame.answer(answer, out -> print(out, answer))
                : frame.nothing(answer, out -> out.println("it says that already"));
    }

    private Kind kind(EntryBook book, JsonNode given, JsonNode entry) {
        String told =
                kind != null ? kind : entry == given ? "" : given.path("kind").asString("");
        if (told.isEmpty()) {
            return book.catalogue()
                    .entry(entry.path("id").asString(""))
                    .map(Entry::entryKind)
                    .orElseThrow(() -> new BadInput(
                            file + " holds a new entry: say with --kind what it is, " + "as --kind quirk"));
        }
        return Kind.named(told)
                .orElseThrow(() -> new BadInput("“" + told + "” is no kind of entry: "
                        + Arrays.stream(Kind.values()).map(Kind::word).collect(Collectors.joining(", "))));
    }

    private JsonNode read() {
        Path path = frame.around().here().resolve(file);
        try {
            JsonNode tree = JsonMapper.shared().readTree(Files.readString(path));
            if (!tree.isObject()) {
                throw new BadInput(file + " holds no entry: one JSON object is wanted");
            }
            return tree;
        } catch (IOException e) {
            throw new BadInput(file + " cannot be read: name a file that is there, in UTF-8");
        } catch (JacksonException e) {
            throw new BadInput(file + " is not JSON: "
                    + String.valueOf(e.getOriginalMessage()).lines().findFirst().orElse("") + "; mend it");
        }
    }

    private static void print(PrintWriter out, Put put) {
        Proposal proposal = put.proposal();
        out.println(proposal.kind() + " " + proposal.id() + ": "
                + proposal.standing().word());
        proposal.changes().forEach(change -> {
            out.println("  " + change.field());
            if (change.before() != null) {
                out.println("    - " + change.before());
            }
            if (change.after() != null) {
                out.println("    + " + change.after());
            }
        });
        proposal.problems().forEach(problem -> out.println("  ! " + problem.line()));
        out.println(put.saved() ? "saved" : "nothing is written yet: add --save");
    }
}
