package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.stock.DrawerBook;
import hornbook.shared.stock.DrawerCard;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Drawers are looked through: the label against what is in it. */
@Command(
        name = "look-through",
        header = "Names drawers that want looking through, or dates one: what its label says, what is really in it.",
        footer = "hornbook look-through \"CORV. DISCS\" --contents \"rollers, Corvane\" --label \"CORV. ROLLERS\"")
final class LookThroughCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "DRAWER",
            arity = "0..1",
            description = "As for the command drawer; if left out, all that want it are named.")
    String called = "";

    @Option(names = "--cabinet", paramLabel = "CABINET", description = "Name only those of this cabinet.")
    String cabinet = "";

    @Option(names = "--right", description = "It was looked through, and its label says what is in it.")
    boolean right;

    @Option(names = "--wrong", description = "It was looked through; its label is wrong, and stays for now.")
    boolean wrong;

    @Option(names = "--label", paramLabel = "WORDS", description = "What its label says from now on.")
    @Nullable
    String label;

    @Option(names = "--contents", paramLabel = "WORDS", description = "What is really in it; else as it stands.")
    @Nullable
    String contents;

    private final Frame frame;

    LookThroughCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        if (called.isEmpty()) {
            return frame.reading(this::due);
        }
        int ways = (right ? 1 : 0) + (wrong ? 1 : 0) + (label != null ? 1 : 0);
        if (ways > 1) {
            throw new BadInput("give one of --right, --wrong and --label");
        }
        if (ways == 0 && contents != null) {
            throw new BadInput("say of its label too: --right, --wrong, or --label WORDS");
        }
        return ways == 0
                ? frame.showing("drawer", called, shop -> shop.stock().drawer(called), this::toAnswer)
                : frame.writing(workshop -> answer(frame, workshop, done(workshop)));
    }

    private Deed done(Workshop workshop) {
        DrawerBook drawers = workshop.drawerBook();
        return label == null
                ? drawers.lookedThrough(called, contents, right)
                : drawers.putRight(called, label, contents, workshop.worker(null));
    }

    private void toAnswer(PrintWriter out, DrawerCard card) {
        DrawerCommand.print(out, card);
        frame.say(
                "nothing is done yet: say --right, --wrong or --label WORDS, and --contents WORDS where they changed");
    }

    /** What a deed on drawers left behind, and which comes next in the walk. */
    record After(
            Deed deed, List<DrawerCard> drawers, @Nullable String next) {}

    static int answer(Frame frame, Workshop workshop, Deed deed) {
        List<DrawerCard> drawers = workshop.drawerBook().after(deed);
        String next = drawers.stream()
                .findFirst()
                .flatMap(card -> workshop.lookThrough().after(card.id()))
                .orElse(null);
        After after = new After(deed, drawers, next);
        return frame.answer(after, out -> {
            after.drawers().forEach(card -> line(out, card));
            OneDeed.line(out, deed);
            out.println(next == null ? "that was the last of its cabinet" : "next in the walk: " + next);
        });
    }

    /** Drawers to be looked through. */
    record Due(List<DrawerCard> drawers) {}

    private int due(Workshop workshop) {
        Due due = new Due(workshop.lookThrough().due(cabinet));
        return due.drawers().isEmpty()
                ? frame.nothing(due, out -> out.println("every drawer is looked through, and its label right"))
                : frame.answer(due, out -> due.drawers().forEach(card -> line(out, card)));
    }

    private static void line(PrintWriter out, DrawerCard card) {
        String seen = card.lastLookedThrough() == null ? "never" : String.valueOf(card.lastLookedThrough());
        String label = card.label().isBlank() ? "(no label)" : "“" + card.label() + "”";
        out.printf("%-12s %-10s  %s  holds: %s%n", card.id(), seen, label, card.contents());
        if (card.heed() != null) {
            out.println("                         ! " + card.heed());
        }
    }
}
