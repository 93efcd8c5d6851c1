package hornbook.viewer.cli;

import hornbook.shared.restock.RestockLine;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.OpenOrder;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes down that an order went out. */
@Command(
        name = "ordered",
        header = "Writes down what was ordered from a supplier, so that nothing is ordered twice.",
        footer = "hornbook restock ordered tidegate")
final class OrderedCommand extends OneDeed {
    @Parameters(index = "0", paramLabel = "SUPPLIER", description = "By name or number.")
    String supplier = "";

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "LOT[=N]",
            description = "Only these lots, as many as the list says or N; else all of the supplier's lines.")
    List<String> lots = List.of();

    OrderedCommand(Frame frame) {
        super(frame);
    }

    /** The deed, and what is on its way by it. */
    record After(Deed deed, List<OpenOrder> orders) {}

    @Override
    Deed done(Workshop workshop) {
        String id = workshop.suppliers().named(supplier).id();
        List<RestockLine> lines = workshop.restock().ask(workshop.wanted()).lines();
        return lots.isEmpty()
                ? workshop.orderBook()
                        .ordered(
                                supplier,
                                lines.stream()
                                        .filter(line -> id.equals(line.supplier()) && line.order() > 0)
                                        .toList())
                : workshop.orderBook().wentOut(supplier, pieces(lines));
    }

    private Map<String, Integer> pieces(List<RestockLine> lines) {
        Map<String, Integer> pieces = new LinkedHashMap<>();
        for (String lot : lots) {
            int equals = lot.indexOf('=');
            if (equals < 0) {
                pieces.put(lot, listed(lot, lines));
            } else {
                pieces.put(lot.substring(0, equals), many(lot, lot.substring(equals + 1)));
            }
        }
        return pieces;
    }

    private static int many(String said, String number) {
        try {
            return Integer.parseInt(number.strip());
        } catch (NumberFormatException e) {
            throw new BadInput("“" + said + "” says not how many: write it as lot-0748=12");
        }
    }

    private static int listed(String lot, List<RestockLine> lines) {
        return lines.stream()
                .filter(line -> lot.equals(line.lot()) && line.order() > 0)
                .map(RestockLine::order)
                .findFirst()
                .orElseThrow(() -> new BadInput(
                        "the list does not say how many of " + lot + " to order: say so, as " + lot + "=12"));
    }

    @Override
    Left left(Workshop workshop, Deed done) {
        After after = new After(
                done,
                workshop.books().touched(done, OpenOrder.class).stream()
                        .flatMap(id -> workshop.books().find(OpenOrder.class, id).stream())
                        .toList());
        return new Left(
                after,
                out -> after.orders().forEach(order -> {
                    String title = workshop.stock()
                            .lot(order.lot())
                            .map(lot -> lot.title())
                            .orElse("");
                    out.println(order.orderRef() + "  " + order.qty() + "  " + title + " (" + order.lot() + ")");
                }));
    }
}
