package hornbook.shared.store;

import hornbook.shared.shop.BadInput;
import java.sql.SQLException;
import java.util.Optional;

/** The rules that the tables themselves keep, in the words of one who broke them. */
final class Rules {
    private Rules() {}

    /** The rule that a record broke, or nothing where the books failed. */
    static Optional<BadInput> broken(String what, SQLException e) {
        String message = String.valueOf(e.getMessage());
        if (!message.contains("SQLITE_CONSTRAINT")) {
            return Optional.empty();
        }
        return Optional.of(new BadInput(what + ": " + why(message)));
    }

    private static String why(String message) {
        if (message.contains("FOREIGN KEY")) {
            return "names something that is not in the books: add that first";
        }
        if (message.contains("drawer_spot") || message.contains("drawer.row")) {
            return "another drawer is at that row and column of its cabinet: choose another place";
        }
        if (message.contains("UNIQUE")) {
            return "there is one already: choose another number";
        }
        if (message.contains("CHECK")) {
            return "a number in it is out of bounds: correct it";
        }
        return "the books do not allow it: correct it";
    }
}
