package hornbook.shared.exchange;

import hornbook.shared.shop.ShopRecord;
import hornbook.shared.store.Writing;

/** The number of a new record: the one given, kept as the shop's own, or the next. */
final class NewIds {
    private static final int LONGEST = 60;

    private NewIds() {}

    static String of(Writing writing, Class<? extends ShopRecord> type, String given) {
        if (given.isEmpty()) {
            return writing.nextId(type);
        }
        if (given.length() > LONGEST) {
            throw new CellRefused("id", "is longer than " + LONGEST + " letters: give it a shorter number");
        }
        if (writing.find(type, given).isPresent()) {
            throw new CellRefused("id", "“" + given + "” is the number of another already: give it a new one, or none");
        }
        return given;
    }
}
