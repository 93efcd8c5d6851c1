package hornbook.viewer.cli;

import hornbook.shared.exchange.CsvFile;
import hornbook.shared.restock.OrderList;
import hornbook.shared.restock.RestockAnswer;
import hornbook.shared.restock.RestockLine;
import hornbook.shared.shop.BadInput;
import hornbook.viewer.workshop.Workshop;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
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

    private final Frame frame;

    RestockCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.reading(workshop -> {
            RestockAnswer answer = workshop.restock().ask(workshop.wanted());
            if (csv != null) {
                write(workshop, answer, frame.around().here().resolve(csv).normalize());
            }
            return answer.lines().isEmpty()
                    ? frame.nothing(answer, out -> {
                        answer.remarks().forEach(remark -> out.println("! " + remark));
                        out.println("nothing is about to run out");
                    })
                    : frame.answer(answer, out -> print(out, answer));
        });
    }

    private static void write(Workshop workshop, RestockAnswer answer, Path file) {
        try {
            CsvFile.write(
                    file,
                    OrderList.COLUMNS,
                    workshop.restock().orders(answer).stream()
                            .flatMap(order -> order.rows().stream())
                            .toList());
        } catch (IOException e) {
            throw new BadInput(file + " cannot be written: name another file with --csv");
        }
    }

    private static void print(PrintWriter out, RestockAnswer answer) {
        answer.remarks().forEach(remark -> out.println("! " + remark));
        answer.lines().forEach(line -> print(out, line));
    }

    private static void print(PrintWriter out, RestockLine line) {
        out.printf(
                "%5d  %s%s%s%n",
                line.order(),
                line.what(),
                line.lot() == null ? "" : "  (" + line.lot() + ")",
                line.supplierName() == null ? "" : "  from " + line.supplierName());
        out.println("       " + line.why());
        line.remarks().forEach(remark -> out.println("       ! " + remark));
    }
}
