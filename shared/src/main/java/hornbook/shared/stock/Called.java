package hornbook.shared.stock;

import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Place;
import hornbook.shared.store.Books;

/** Lots and places as people call them, for the titles of deeds; the number beside only where two could be meant. */
final class Called {
    private final Books books;

    Called(Books books) {
        this.books = books;
    }

    String lot(String id) {
        return books.evenRetired(Lot.class, id).map(this::lot).orElse(id);
    }

    private String lot(Lot lot) {
        long alike = books.where(Lot.class, "title", lot.title()).stream()
                .filter(other -> !other.id().equals(lot.id()))
                .count();
        return alike == 0 ? lot.title() : lot.title() + " (" + lot.id() + ")";
    }

    String spot(Spot spot) {
        return spot.drawer() == null
                ? books.find(Place.class, spot.id()).map(Place::name).orElse(spot.id())
                : books.find(Drawer.class, spot.drawer()).map(this::drawer).orElse(spot.id());
    }

    private String drawer(Drawer drawer) {
        String label = drawer.labelAsWritten();
        if (label.isBlank()) {
            return drawer.id();
        }
        boolean alone = books.where(Drawer.class, "label_as_written", label).size() == 1;
        return "“" + label + "”" + (alone ? "" : " (" + drawer.id() + ")");
    }
}
