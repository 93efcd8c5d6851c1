package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.stock.DrawerCard;
import hornbook.shared.stock.LotLine;
import hornbook.shared.stock.ToolLine;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows what is in a drawer. */
@Command(
        name = "drawer",
        header = "Shows a drawer or another place: its label, and what is really in it.",
        footer = "hornbook drawer \"CORV. DISCS\"")
final class DrawerCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "DRAWER",
            description = "Its number, its label or a part of it, or cabinet and spot (card r5c5).")
    List<String> called = List.of();

    private final Frame frame;

    DrawerCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        if (called.isEmpty()) {
            throw new BadInput(
                    "say which drawer: its number or what its label says; “hornbook cabinet” lists them all");
        }
        String name = String.join(" ", called);
        return frame.showing("drawer", name, shop -> shop.stock().drawer(name), DrawerCommand::print);
    }

    static void print(PrintWriter out, DrawerCard card) {
        out.println(card.id() + "  " + (card.label().isBlank() ? "(no label)" : card.label()));
        out.println("  " + card.where());
        out.println("  holds: " + (card.contents().isBlank() ? "nothing" : card.contents()));
        if (card.heed() != null) {
            out.println("  ! " + card.heed());
        }
        if (!card.note().isBlank()) {
            out.println("  note: " + card.note());
        }
        card.lots().forEach(lot -> print(out, lot));
        card.tools().forEach(tool -> print(out, tool));
        card.outOfUse().forEach(lot -> out.println("  out of use: " + lot.id() + "  " + lot.title()));
    }

    private static void print(PrintWriter out, LotLine lot) {
        String size = lot.dimensions().replace(";", "  ");
        String thread = lot.thread() == null ? "" : "  " + lot.thread();
        out.printf("  %-9s %6s  %s  %s%s%n", lot.id(), lot.count(), lot.title(), size, thread);
        if (lot.heed() != null) {
            out.println("                    ! " + lot.heed());
        }
    }

    private static void print(PrintWriter out, ToolLine tool) {
        out.printf(
                "  %s  %s%s%n", tool.id(), tool.title(), tool.state().equals("good") ? "" : "  (" + tool.state() + ")");
    }
}
