package hornbook.viewer.cli;

import hornbook.shared.store.Deed;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes back what was done. */
@Command(
        name = "undo",
        header = "Takes back what was done last, or the deed of that number.",
        footer = "hornbook undo --list")
final class UndoCommand implements Callable<Integer> {
    private static final int LISTED = 12;

    @Parameters(paramLabel = "N", arity = "0..1", description = "The deed's number; the last one if left out.")
    @Nullable
    Long number;

    @Option(names = "--list", description = "Show the last deeds and change nothing.")
    boolean list;

    private final Frame frame;

    UndoCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return list
                ? frame.reading(workshop -> show(workshop.books().deeds(LISTED)))
                : frame.writing(workshop -> {
                    Deed done = number != null
                            ? workshop.books().undo(number)
                            : workshop.books().undoLast();
                    return frame.answer(done, out -> out.println(done.title() + " (deed " + done.number() + ")"));
                });
    }

    private int show(List<Deed> deeds) {
        return frame.answer(
                deeds,
                out -> deeds.forEach(deed -> out.printf(
                        "%6d  %s  %s%s%n",
                        deed.number(), deed.day(), deed.title(), deed.undoneBy() == null ? "" : "  (undone)")));
    }
}
