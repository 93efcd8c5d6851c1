package hornbook.viewer.paper.order;

import hornbook.shared.restock.OrderList;
import hornbook.shared.restock.RestockAnswer;
import hornbook.shared.restock.RestockLine;
import hornbook.viewer.paper.Grid;
import hornbook.viewer.paper.Headline;
import hornbook.viewer.paper.Item;
import hornbook.viewer.paper.Item.Mark;
import hornbook.viewer.paper.Pages;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Piece;
import hornbook.viewer.paper.Printed;
import hornbook.viewer.paper.Prose;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Prints what to order: a page to send to each supplier, then one for the shop that says why and what to look at. */
public final class OrderPaper {
    private static final double POINTS = 10;
    private static final double TITLE = 16;
    private static final List<Double> SHARES = List.of(0.12, 0.58, 0.15, 0.15);

    private final PaperSize paper;
    private final String shop;
    private final LocalDate day;

    /** @param shop its name, as the supplier knows it */
    public OrderPaper(PaperSize paper, String shop, LocalDate day) {
        this.paper = paper;
        this.shop = shop;
        this.day = day;
    }

    /** @throws hornbook.shared.shop.BadInput where the file cannot be written */
    public Printed print(RestockAnswer answer, List<OrderList> orders, Path file) {
        List<List<Piece>> chapters = new ArrayList<>();
        orders.forEach(order -> chapters.add(supplier(order)));
        chapters.add(shop(answer));
        return new Pages(paper, shop + ", " + day).print(chapters, file);
    }

    private List<Piece> supplier(OrderList order) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Headline("Order to " + order.name(), TITLE));
        pieces.add(item(new Prose().plain("From " + shop + ", " + day + ".")));
        pieces.add(Grid.head(List.of("Pieces", "What", "Our lot", "Packs of"), SHARES, POINTS));
        order.lines()
                .forEach(line -> pieces.add(Grid.row(
                        List.of(
                                String.valueOf(line.order()),
                                line.what(),
                                line.lot() == null ? "" : line.lot(),
                                line.pack() > 1 ? String.valueOf(line.pack()) : ""),
                        SHARES,
                        POINTS)));
        if (order.total() != null) {
            pieces.add(item(
                    new Prose().bold("At the last prices paid: " + order.total().toPlainString())));
        }
        pieces.add(item(new Prose().plain("No substitutes without asking, please.")));
        return pieces;
    }

    private List<Piece> shop(RestockAnswer answer) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Headline("For the shop: why", TITLE));
        answer.remarks().forEach(remark -> pieces.add(Item.of(new Prose().bold(remark), Mark.STOP, POINTS)));
        answer.toOrder().forEach(line -> pieces.add(why(line)));
        List<RestockLine> first = answer.toDoFirst();
        if (!first.isEmpty()) {
            pieces.add(new Headline("To do before ordering", TITLE - 2));
            first.forEach(line -> pieces.add(why(line)));
        }
        return pieces;
    }

    private static Item why(RestockLine line) {
        Prose prose = new Prose()
                .tick()
                .bold((line.order() > 0 ? line.order() + " " : "") + line.what())
                .plain(place(line) + ": " + ended(line.why()));
        line.remarks().forEach(remark -> prose.plain(ended(remark)));
        return Item.of(prose, Mark.NONE, POINTS);
    }

    private static String ended(String sentence) {
        return sentence.endsWith(".") ? sentence : sentence + ".";
    }

    private static String place(RestockLine line) {
        return line.drawer() == null ? "" : "in " + line.drawer();
    }

    private static Item item(Prose prose) {
        return Item.of(prose, Mark.NONE, POINTS);
    }
}
