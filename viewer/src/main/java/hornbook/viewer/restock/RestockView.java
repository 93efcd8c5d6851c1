package hornbook.viewer.restock;

import hornbook.shared.restock.OnTheWay;
import hornbook.shared.restock.RestockLine;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the screen shows at one moment.
 *
 * @param list absent until it first came
 * @param busy true while the list is being reckoned
 * @param unpacking the order whose goods are being taken in
 * @param said what was written, in a sentence
 * @param trouble what went wrong, in a sentence
 */
record RestockView(
        @Nullable RestockList list,
        boolean busy,
        @Nullable OnTheWay unpacking,
        @Nullable String said,
        @Nullable String trouble) {
    static final RestockView NOTHING = new RestockView(null, false, null, null, null);

    /** Lines that ask for something before anything is ordered. */
    List<RestockLine> first() {
        return list == null ? List.of() : list.answer().toDoFirst();
    }

    boolean nothingToDo() {
        return list != null && list.answer().lines().isEmpty() && list.coming().isEmpty();
    }

    RestockView asking() {
        return new RestockView(list, true, unpacking, said, trouble);
    }

    RestockView with(RestockList now) {
        OnTheWay still = unpacking == null
                ? null
                : now.coming().stream()
                        .filter(coming -> coming.order().equals(unpacking.order()))
                        .findFirst()
                        .orElse(null);
        return new RestockView(now, false, still, said, null);
    }

    RestockView stopped() {
        return new RestockView(list, false, unpacking, "Stopped. Ask again when you like.", trouble);
    }

    RestockView unpacking(@Nullable OnTheWay order) {
        return new RestockView(list, busy, order, said, null);
    }

    RestockView said(String what) {
        return new RestockView(list, busy, unpacking, what, null);
    }

    RestockView troubled(String what) {
        return new RestockView(list, false, unpacking, said, what);
    }
}
