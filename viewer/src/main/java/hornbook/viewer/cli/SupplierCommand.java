package hornbook.viewer.cli;

import hornbook.shared.shop.Counted;
import hornbook.shared.supply.SupplierCard;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Who sells to the shop. */
@Command(
        name = "supplier",
        header = "Lists the suppliers, or shows one: how long it takes, what it sells, whether to buy there again.",
        footer = "hornbook supplier tidegate")
final class SupplierCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "SUPPLIER",
            arity = "0..1",
            description = "Its number, its name or how that begins; if left out, all are listed.")
    String called = "";

    private final Frame frame;

    private SupplierCommand(Frame frame) {
        this.frame = frame;
    }

    static CommandLine line(Frame frame) {
        return Verbs.of(
                new SupplierCommand(frame),
                new SupplierDeed.New(frame),
                new SupplierDeed.Change(frame),
                new SupplierDeed.Retire(frame),
                new SupplierDeed.BringBack(frame));
    }

    @Override
    public Integer call() {
        return called.isEmpty()
                ? frame.reading(this::all)
                : frame.showing("supplier", called, shop -> shop.suppliers().card(called), SupplierCommand::print);
    }

    /** Everybody who sells to the shop. */
    record AllSuppliers(List<SupplierCard> suppliers) {}

    private int all(Workshop workshop) {
        AllSuppliers all = new AllSuppliers(workshop.suppliers().all());
        return all.suppliers().isEmpty()
                ? frame.nothing(
                        all, out -> out.println("there is no supplier yet: “hornbook supplier new NAME” makes one"))
                : frame.answer(all, out -> all.suppliers().forEach(supplier -> brief(out, supplier)));
    }

    private static void brief(PrintWriter out, SupplierCard supplier) {
        String takes = supplier.typicalDays() == null
                ? "no delivery on record"
                : "takes " + Counted.of(supplier.typicalDays(), "day") + " or so";
        out.printf(
                "%-20s %s  %s%s%n",
                supplier.id(), supplier.name(), takes, supplier.verdict().isBlank() ? "" : ", " + supplier.verdict());
    }

    static void print(PrintWriter out, SupplierCard supplier) {
        brief(out, supplier);
        said(out, "where", supplier.place());
        said(
                out,
                "days from order to arrival",
                supplier.days().stream().map(String::valueOf).collect(Collectors.joining(" ")));
        said(out, "packs", supplier.packs());
        said(
                out,
                "smallest order",
                supplier.smallestOrder() == null ? "" : supplier.smallestOrder().toPlainString());
        said(out, "why", supplier.why());
        out.println("  lots bought there: " + supplier.lots() + ", orders on their way: " + supplier.orders());
    }

    private static void said(PrintWriter out, String what, String words) {
        if (!words.isBlank()) {
            out.println("  " + what + ": " + words);
        }
    }
}
