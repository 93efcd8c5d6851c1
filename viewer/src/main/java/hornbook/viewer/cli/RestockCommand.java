package hornbook.viewer.cli;

import hornbook.shared.restock.RestockAnswer;
import hornbook.shared.restock.RestockLine;
import hornbook.shared.shop.Counted;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Printed;
import hornbook.viewer.paper.order.OrderPaper;
import hornbook.viewer.paper.order.OrderSheet;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What is about to run out? */
@Command(
        name = "restock",
        header = "What is about to run out, what open jobs want, from whom to order, and why.",
        footer = "hornbook restock")
final class RestockCommand implements Callable<Integer> {
    @Option(names = "--csv", paramLabel = "FILE", description = "Write the order lists, supplier by supplier, as CSV.")
    @Nullable
    Path csv;

    @Option(
            names = "--pdf",
            paramLabel = "FILE",
            description = "Print a page for each supplier, and one that says why.")
    @Nullable
    Path pdf;

    @Option(names = "--paper", paramLabel = "a4|letter", defaultValue = "a4", description = "The sheet; else a4.")
    String paper = "";

    private final Frame frame;

    private RestockCommand(Frame frame) {
        this.frame = frame;
    }

    static CommandLine line(Frame frame) {
        return Verbs.of(new RestockCommand(frame), new OrderedCommand(frame), new VerdictCommand(frame));
    }

    @Override
    public Integer call() {
        return frame.reading(workshop -> {
            RestockAnswer answer = workshop.restock().ask(workshop.wanted());
            if (csv != null) {
                OrderSheet.write(
                        workshop.restock().orders(answer),
                        frame.around().here().resolve(csv).normalize());
            }
            if (pdf != null) {
                print(workshop, answer, frame.around().here().resolve(pdf).normalize());
            }
            return answer.lines().isEmpty()
                    ? frame.nothing(answer, out -> {
                        answer.remarks().forEach(remark -> out.println("! " + remark));
                        out.println("nothing is about to run out");
                    })
                    : frame.answer(answer, out -> print(out, answer));
        });
    }

    private void print(Workshop workshop, RestockAnswer answer, Path file) {
        Printed printed = new OrderPaper(
                        PaperSize.named(paper),
                        workshop.name(),
                        workshop.books().today())
                .print(answer, workshop.restock().orders(answer), file);
        frame.say(printed.file() + "  " + Counted.of(printed.pages(), "page"));
    }

    private static void print(PrintWriter out, RestockAnswer answer) {
        answer.remarks().forEach(remark -> out.println("! " + remark));
        answer.toOrder().forEach(line -> print(out, line));
        if (!answer.toDoFirst().isEmpty()) {
            out.println("To do before ordering:");
            answer.toDoFirst().forEach(line -> print(out, line));
        }
    }

    private static void print(PrintWriter out, RestockLine line) {
        out.printf(
                "%5s  %s%s%s%n",
                line.order() > 0 ? line.order() : "-",
                line.what(),
                line.lot() == null ? "" : "  (" + line.lot() + ")",
                line.supplierName() == null || line.order() == 0 ? "" : "  from " + line.supplierName());
        out.println("       " + line.why());
        line.remarks().forEach(remark -> out.println("       ! " + remark));
    }
}
