package hornbook.viewer.cli;

import hornbook.shared.stock.LotCard;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows a lot. */
@Command(
        name = "lot",
        header = "Shows a lot: what it is, where it lies, how many, and its last movements.",
        footer = "hornbook lot lot-0260")
final class LotCommand implements Callable<Integer> {
    @Parameters(paramLabel = "LOT", description = "Its number.")
    String id = "";

    private final Frame frame;

    LotCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.showing("lot", id, shop -> shop.stock().lot(id), LotCommand::print);
    }

    private static void print(PrintWriter out, LotCard lot) {
        out.println(lot.id() + "  " + lot.title() + "  (" + lot.state() + ")");
        out.println("  in " + lot.drawer() + " “" + lot.drawerLabel() + "”, " + lot.where());
        out.println("  on hand: " + lot.count());
        if (lot.heed() != null) {
            out.println("  ! " + lot.heed());
        }
        out.println("  " + lot.dimensions().replace(";", "  ") + (lot.thread() == null ? "" : "  " + lot.thread()));
        if (!lot.note().isBlank()) {
            out.println("  note: " + lot.note());
        }
        for (LotCard.Line line : lot.ledger()) {
            String job = line.job() == null ? "" : line.job();
            out.printf("  %s  %+4d  %-10s %s %s%n", line.day(), line.qty(), line.kind(), job, line.note());
        }
    }
}
