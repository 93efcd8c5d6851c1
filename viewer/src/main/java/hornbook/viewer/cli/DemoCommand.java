package hornbook.viewer.cli;

import hornbook.indexer.search.Answer;
import hornbook.indexer.search.Question;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Makes the demonstration shop and shows it. */
@Command(
        name = "demo",
        header = "Makes an invented shop to try things on, and opens it.",
        footer = "hornbook demo --at demo-shop")
final class DemoCommand implements Callable<Integer> {
    private static final int SHOWN = 3;

    @Option(names = "--at", paramLabel = "DIR", description = "Where to make it; its usual folder if left out.")
    @Nullable
    Path at;

    private final Frame frame;
    private final WindowStart window;

    DemoCommand(Frame frame, WindowStart window) {
        this.frame = frame;
        this.window = window;
    }

    /** What is asked of the demo where no window can show it. */
    record Shown(Path shop, List<Asked> asked) {}

    /** A question in words, as it is typed, and its answer. */
    record Asked(String question, String typed, Answer answer) {}

    @Override
    public Integer call() {
        Path folder = at == null
                ? frame.folders().demo()
                : frame.around().here().resolve(at).normalize();
        Shown shown;
        try (Workshop workshop = DemoShop.in(folder)) {
            shown = new Shown(
                    folder,
                    List.of(
                            asked(
                                    workshop,
                                    "What are this horn's quirks?",
                                    "chantreval halyard threaded bearing",
                                    "quirk",
                                    "model"),
                            asked(workshop, "Which drawer holds the part?", "corvane disc 19", "lot"),
                            asked(
                                    workshop,
                                    "How did the last one go?",
                                    "how did the last chantreval halyard go",
                                    "job")));
        }
        if (frame.around().hasDisplay() && !frame.options().json) {
            return window.open(frame.folders().withShop(folder), false);
        }
        return frame.answer(shown, out -> print(out, shown));
    }

    private static Asked asked(Workshop workshop, String question, String typed, String... kinds) {
        return new Asked(question, typed, workshop.search().find(new Question(typed, SHOWN, Set.of(kinds))));
    }

    private static void print(PrintWriter out, Shown shown) {
        out.println("The demo shop is in " + shown.shop());
        for (Asked asked : shown.asked()) {
            out.println();
            out.println(asked.question() + "  (" + asked.typed() + ")");
            FindCommand.print(out, asked.answer());
        }
        out.println();
        out.println("Ask on:  viewer/hornbook find --shop " + shown.shop() + " two-pin spanner");
        out.println("or with a display:  viewer/hornbook open --shop " + shown.shop());
    }
}
