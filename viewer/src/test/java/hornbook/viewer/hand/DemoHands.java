package hornbook.viewer.hand;

import hornbook.viewer.workshop.Workshop;

/** Hands in the demonstration shop. */
public final class DemoHands {
    private DemoHands() {}

    public static Hands of(Workshop shop) {
        Described described = new Described(
                title -> shop.names().thing(title).orElse(""),
                () -> shop.sizes().reader());
        return new Hands(
                shop.stockBook(),
                shop.drawerBook(),
                described,
                new SortingOut(shop.bagBook(), shop::alike, described),
                () -> "N.O.");
    }
}
