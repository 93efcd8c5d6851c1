package hornbook.shared.store;

import hornbook.shared.shop.ShopRecord;
import java.util.Locale;

/** A number that says what it belongs to, made of a name: {@code c-oak-chest}. */
public final class FreeId {
    private FreeId() {}

    /** Never given before, not even to what is retired. */
    public static String of(Books books, Class<? extends ShopRecord> type, String prefix, String name) {
        String plain =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String first = prefix + (plain.isEmpty() ? "x" : plain);
        String id = first;
        for (int n = 2; books.evenRetired(type, id).isPresent(); n++) {
            id = first + "-" + n;
        }
        return id;
    }
}
