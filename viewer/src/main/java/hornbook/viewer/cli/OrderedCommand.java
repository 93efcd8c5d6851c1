package hornbook.viewer.cli;

import hornbook.shared.restock.RestockLine;
import hornbook.shared.shop.OpenOrder;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes down that an order went out. */
@Command(
        name = "ordered",
        header = "Writes down that a supplier's order list went out, so that nothing is ordered twice.",
        footer = "hornbook restock ordered sup-v-tidegate")
final class OrderedCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "SUPPLIER", description = "By number, as “hornbook restock” names it.")
    String supplier = "";

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "LOT",
            description = "Only these lots; else all of the supplier's lines.")
    List<String> lots = List.of();

    private final Frame frame;

    OrderedCommand(Frame frame) {
        this.frame = frame;
    }

    /** The deed, and what is on its way by it. */
    record After(Deed deed, List<OpenOrder> orders) {}

    @Override
    public Integer call() {
        return frame.writing(workshop -> {
            Deed deed = workshop.orderBook().ordered(supplier, lines(workshop));
            After after = new After(
                    deed,
                    workshop.books().touched(deed, OpenOrder.class).stream()
                            .flatMap(id -> workshop.books().find(OpenOrder.class, id).stream())
                            .toList());
            return frame.answer(after, out -> {
                after.orders()
                        .forEach(order -> out.println(order.orderRef() + "  " + order.qty() + "  " + order.lot()));
                out.println("deed " + deed.number() + ": " + deed.title() + " (“hornbook undo” takes it back)");
            });
        });
    }

    private List<RestockLine> lines(Workshop workshop) {
        return workshop.restock().ask(workshop.wanted()).lines().stream()
                .filter(line -> supplier.equals(line.supplier()))
                .filter(line -> lots.isEmpty() ? line.order() > 0 : lots.contains(line.lot()))
                .toList();
    }
}
