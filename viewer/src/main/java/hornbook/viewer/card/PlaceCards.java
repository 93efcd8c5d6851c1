package hornbook.viewer.card;

import hornbook.shared.stock.CabinetPlan;
import hornbook.shared.stock.DrawerCard;
import hornbook.shared.stock.DrawerFront;
import hornbook.shared.stock.Furniture;
import hornbook.shared.stock.LotCard;
import hornbook.shared.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Cards of what lies in the shop: lots, drawers and other places, cabinets, tools. */
final class PlaceCards {
    private final Stock stock;
    private final Furniture furniture;
    private final UnaryOperator<String> titles;

    /** @param titles what a person calls an entry */
    PlaceCards(Stock stock, Furniture furniture, UnaryOperator<String> titles) {
        this.titles = titles;
        this.stock = stock;
        this.furniture = furniture;
    }

    Optional<Card> lot(String id) {
        return stock.lot(id).map(this::card);
    }

    private Card card(LotCard lot) {
        Blocks blocks = new Blocks()
                .add(new Block.Lies(lot.drawer(), lot.drawerLabel(), lot.where(), lot.count()))
                .heed(lot.heed(), false)
                .text("Sizes", sizes(lot.dimensions()))
                .text("Thread", lot.thread())
                .text("Material", lot.material())
                .text("Colour", lot.colour())
                .text("State", lot.state())
                .text("", lot.note())
                .links("Fits", links("model", lot.fitsModels()))
                .links("What it is", links("thing", List.of(lot.item())));
        stock.drawer(lot.drawer()).ifPresent(drawer -> {
            List<hornbook.shared.stock.LotLine> others = drawer.lots().stream()
                    .filter(line -> !line.id().equals(lot.id()))
                    .toList();
            if (!others.isEmpty()) {
                blocks.text("In the same drawer", drawer.contents()).add(new Block.Lots(others));
            }
        });
        blocks.text("Last movements", ledger(lot));
        return new Card("lot", lot.id(), lot.title(), blocks.list());
    }

    private static String ledger(LotCard lot) {
        List<String> lines = new ArrayList<>();
        for (LotCard.Line line : lot.ledger()) {
            String job = line.job() == null ? "" : "  " + line.job();
            String note = line.note().isBlank() ? "" : "  " + line.note();
            lines.add("%s  %+d  %s%s%s".formatted(line.day(), line.qty(), line.kind(), job, note));
        }
        return String.join("\n", lines);
    }

    static String sizes(String dimensions) {
        return dimensions.replace(";", "   ").replace("=", " ");
    }

    Optional<Card> place(String id) {
        return stock.drawer(id).map(this::card);
    }

    private Card card(DrawerCard drawer) {
        Blocks blocks = new Blocks()
                .add(new Block.Lies(drawer.id(), drawer.label(), drawer.where(), ""))
                .heed(drawer.heed(), false)
                .text("Found in it", drawer.contents())
                .text("", drawer.note());
        if (!drawer.lots().isEmpty()) {
            blocks.add(new Block.Lots(drawer.lots()));
        }
        blocks.links(
                "Tools",
                drawer.tools().stream()
                        .map(tool -> new Block.Link("tool", tool.id(), tool.title(), tool.note()))
                        .toList());
        blocks.links("Beside it", neighbours(drawer.id()));
        String title = drawer.label().isBlank() ? "Drawer without a label" : drawer.label();
        return new Card("place", drawer.id(), title, blocks.list());
    }

    /** The drawers that touch it: a part put back wrongly is usually one off. */
    private List<Block.Link> neighbours(String drawer) {
        for (CabinetPlan plan : furniture.plans()) {
            Optional<DrawerFront> here =
                    plan.drawers().stream().filter(d -> d.id().equals(drawer)).findFirst();
            if (here.isPresent()) {
                return plan.drawers().stream()
                        .filter(other -> touches(here.get(), other))
                        .map(other -> new Block.Link(
                                "place",
                                other.id(),
                                other.label().isBlank() ? "no label" : other.label(),
                                side(here.get(), other)))
                        .toList();
            }
        }
        return List.of();
    }

    private static boolean touches(DrawerFront here, DrawerFront other) {
        return Math.abs(here.row() - other.row()) + Math.abs(here.column() - other.column()) == 1;
    }

    private static String side(DrawerFront here, DrawerFront other) {
        if (other.row() != here.row()) {
            return other.row() < here.row() ? "above" : "below";
        }
        return other.column() < here.column() ? "left" : "right";
    }

    Optional<Card> cabinet(String id) {
        return furniture.plans().stream()
                .filter(plan -> plan.id().equals(id))
                .findFirst()
                .map(plan -> new Card(
                        "cabinet",
                        plan.id(),
                        plan.name(),
                        new Blocks()
                                .text("Stands", plan.where())
                                .text("", plan.notes())
                                .links(
                                        "Its drawers",
                                        plan.drawers().stream()
                                                .map(d -> new Block.Link(
                                                        "place",
                                                        d.id(),
                                                        d.label().isBlank() ? "no label" : d.label(),
                                                        "r" + d.row() + " c" + d.column()))
                                                .toList())
                                .list()));
    }

    /** A tool of the shop and what is known of its kind are one card. */
    Optional<Card> tool(String id, Optional<Card> known) {
        Optional<DrawerCard> place = stock.placeOfTool(id);
        if (place.isEmpty()) {
            return known;
        }
        DrawerCard where = place.get();
        Blocks blocks = new Blocks().add(new Block.Lies(where.id(), where.label(), where.where(), ""));
        where.tools().stream()
                .filter(tool -> tool.id().equals(id))
                .forEach(tool -> blocks.text("State", tool.state()).text("", tool.note()));
        known.ifPresent(card -> card.blocks().forEach(blocks::add));
        String title = known.map(Card::title)
                .orElseGet(() -> where.tools().stream()
                        .filter(tool -> tool.id().equals(id))
                        .map(hornbook.shared.stock.ToolLine::title)
                        .findFirst()
                        .orElse(id));
        return Optional.of(new Card("tool", id, title, blocks.list()));
    }

    private List<Block.Link> links(String kind, List<String> ids) {
        return ids.stream()
                .map(id -> new Block.Link(kind, id, titles.apply(id), ""))
                .toList();
    }
}
