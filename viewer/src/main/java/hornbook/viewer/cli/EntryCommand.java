package hornbook.viewer.cli;

import hornbook.catalogue.edit.Facts;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.EntryWriter;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import tools.jackson.databind.JsonNode;

/** Knowledge: one subcommand a thing that is done to an entry. */
@Command(name = "entry", header = "Shows and writes entries of knowledge.", footer = "hornbook entry show q-red-rot")
final class EntryCommand {
    private EntryCommand() {}

    static CommandLine line(Frame frame) {
        return Verbs.of(new EntryCommand(), new Show(frame), new EntryPutCommand(frame), new TakeAway(frame));
    }

    /**
     * An entry as it is shown.
     *
     * @param kind as in commands
     * @param own whether it is the shop's own
     * @param entry as its file says it
     */
    record Shown(String kind, boolean own, JsonNode entry) {
        static Shown of(Workshop workshop, Entry entry) {
            return new Shown(
                    entry.entryKind().word(), workshop.catalogue().isOwn(entry.id()), new EntryWriter().tree(entry));
        }
    }

    /** Shows an entry. */
    @Command(
            name = "show",
            header = "Shows an entry, field by field, with its source. With --json as “entry put” takes it.",
            footer = "hornbook entry show q-red-rot")
    static final class Show implements Callable<Integer> {
        @Parameters(paramLabel = "ENTRY", description = "Its id.")
        String id = "";

        private final Frame frame;

        Show(Frame frame) {
            this.frame = frame;
        }

        @Override
        public Integer call() {
            return frame.reading(workshop -> workshop.catalogue()
                    .entry(id)
                    .map(entry -> {
                        Shown shown = Shown.of(workshop, entry);
                        return frame.answer(shown, out -> print(out, entry, shown.own()));
                    })
                    .orElseGet(() -> frame.notThere("entry", id)));
        }
    }

    private static void print(PrintWriter out, Entry entry, boolean own) {
        out.println(
                entry.title() + "  (" + entry.entryKind().word() + ", " + (own ? "the shop's own" : "shipped") + ")");
        Facts.of(entry).forEach((field, words) -> out.println("  " + field + ": " + words));
    }

    /** Takes an own entry away. */
    @Command(
            name = "take-away",
            header = "Takes one of the shop's own entries away; a shipped one under it holds again.",
            footer = "hornbook entry take-away k-halverick")
    static final class TakeAway implements Callable<Integer> {
        @Parameters(paramLabel = "ENTRY", description = "Its id.")
        String id = "";

        private final Frame frame;

        TakeAway(Frame frame) {
            this.frame = frame;
        }

        @Override
        public Integer call() {
            return frame.writing(workshop -> {
                Taken taken = taken(workshop);
                return frame.answer(
                        taken,
                        out -> out.println(
                                taken.shipped().isPresent()
                                        ? id + ": the shipped one holds again"
                                        : id + " is taken away"));
            });
        }

        private Taken taken(Workshop workshop) {
            return new Taken(id, workshop.entryBook().takeAway(id).map(new EntryWriter()::tree));
        }
    }

    /**
     * What was taken away.
     *
     * @param shipped what holds again
     */
    record Taken(String id, Optional<JsonNode> shipped) {}
}
