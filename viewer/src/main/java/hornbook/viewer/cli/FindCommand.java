package hornbook.viewer.cli;

import hornbook.indexer.search.Answer;
import hornbook.indexer.search.Hit;
import hornbook.indexer.search.Question;
import hornbook.shared.shop.BadInput;
import java.io.PrintWriter;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Asks the search box. */
@Command(
        name = "find",
        header = "Finds anything: a part and its drawer, a quirk, a fault, a tool, how the last one went.",
        footer = "hornbook find corvane disc 19")
final class FindCommand implements Callable<Integer> {
    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm").withZone(ZoneId.systemDefault());

    @Parameters(
            paramLabel = "TEXT",
            arity = "1..*",
            description = "As you would say it; sizes and threads as you write them.")
    List<String> words = List.of();

    @Option(names = "--limit", paramLabel = "N", description = "Most hits; 20 if left out.")
    int limit = 20;

    @Option(
            names = "--kind",
            paramLabel = "K",
            description = "Only this kind, as lot, place, job, quirk, part, tool; may be given again.")
    List<String> kinds = List.of();

    private final Frame frame;

    FindCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.reading(workshop -> {
            if (limit < 1) {
                throw new BadInput("--limit " + limit + " shows nothing: name 1 or more");
            }
            Answer answer = workshop.search().find(new Question(String.join(" ", words), limit, Set.copyOf(kinds)));
            return answer.hits().isEmpty()
                    ? frame.nothing(answer, out -> out.println("nothing found for “" + String.join(" ", words) + "”"))
                    : frame.answer(answer, out -> print(out, answer));
        });
    }

    static void print(PrintWriter out, Answer answer) {
        if (answer.asOf() != null) {
            out.println("as of " + MINUTE.format(answer.asOf()) + ": the shop has been written in since");
        }
        answer.hits().forEach(hit -> print(out, hit));
    }

    private static void print(PrintWriter out, Hit hit) {
        String count = hit.onHand() == null ? "" : hit.onHand();
        out.printf("%-8s %-9s %6s  %s%n", hit.kind(), hit.id(), count, hit.title());
        if (hit.drawer() != null) {
            String label = hit.drawerLabel() == null || hit.drawerLabel().isBlank() ? "no label" : hit.drawerLabel();
            out.println("                           in " + hit.drawer() + " “" + label + "”"
                    + (hit.where() == null ? "" : ", " + hit.where()));
        }
        out.println("                           " + hit.why());
    }
}
