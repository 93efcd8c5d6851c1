package hornbook.catalogue.exchange;

import hornbook.shared.exchange.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * Where a row stands.
 *
 * @param row counts records; in a CSV file the header is 1
 */
record Place(String file, long row, long line) {
    Refusal refuse(@Nullable String field, String why) {
        return new Refusal(file, row, line, field == null || field.isEmpty() ? null : field, why);
    }
}
