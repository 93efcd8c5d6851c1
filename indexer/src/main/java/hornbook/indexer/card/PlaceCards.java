package hornbook.indexer.card;

import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.LabelState;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Place;
import hornbook.shared.shop.ShopTool;
import java.util.List;

/** Cards of cabinets, drawers and other places: found by what is in them, and by what is written on them. */
final class PlaceCards {
    private static final float FULL = 0.8f;
    private static final float EMPTY = 0.55f;
    /** More than that would say nothing of a drawer. */
    private static final int LOTS = 40;

    private final Names names;

    PlaceCards(Names names) {
        this.names = names;
    }

    Card cabinet(Cabinet cabinet) {
        return Card.draft("cabinet", cabinet.id(), cabinet.name())
                .say(Field.TEXT, cabinet.where())
                .say(Field.TEXT, cabinet.notes())
                .standing(FULL)
                .card();
    }

    Card drawer(Drawer drawer, Spot spot, List<Lot> lots, List<ShopTool> tools) {
        String label = drawer.labelAsWritten();
        String title = (label.isBlank() ? "no label" : "“" + label + "”") + ": " + spot.where();
        Draft card = Card.draft("place", drawer.id(), title);
        card.instead(Field.TITLE, Field.LABEL, label);
        if (drawer.labelState() == LabelState.RIGHT) {
            card.say(Field.NAME, label);
        }
        card.say(Field.GIST, drawer.contentsAsFound())
                .say(Field.TEXT, drawer.note())
                .say(Field.TEXT, spot.where());
        contents(card, lots, tools);
        boolean empty = lots.isEmpty() && tools.isEmpty();
        return card.standing(empty ? EMPTY : FULL).shown(spot.shown()).card();
    }

    Card place(Place place, Spot spot, List<Lot> lots, List<ShopTool> tools) {
        Draft card = Card.draft("place", place.id(), place.name() + ", " + place.where())
                .say(Field.TEXT, place.kind())
                .say(Field.TEXT, place.note())
                .say(Field.NAME, names.title(place.model()))
                .concept(place.model(), 3);
        contents(card, lots, tools);
        return card.standing(FULL).shown(spot.shown()).card();
    }

    private void contents(Draft card, List<Lot> lots, List<ShopTool> tools) {
        lots.stream().limit(LOTS).forEach(lot -> {
            card.say(Field.TEXT, lot.title()).concept(lot.item(), 1);
            lot.fitsMakes().forEach(make -> card.concept(make, 0.5f));
        });
        tools.forEach(tool -> card.say(Field.TEXT, tool.title()).concept(tool.id(), 1));
    }
}
