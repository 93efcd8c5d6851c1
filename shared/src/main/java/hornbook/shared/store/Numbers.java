package hornbook.shared.store;

import hornbook.shared.shop.Kind;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalLong;

/** The numbers given to records, so that none is given twice; kept up by each deed, as a search of all would not do. */
final class Numbers {
    /** Digits of the first number of a kind where the shop has none yet. */
    private static final int WIDTH = 4;

    /** Longer ones are somebody's serials, not counted numbers. */
    private static final int MOST_DIGITS = 15;

    private record Last(long number, int width, boolean fresh) {}

    private final Query query;
    private final Map<String, Last> last = new HashMap<>();

    Numbers(Query query) {
        this.query = query;
    }

    String next(Kind<?> kind) {
        Last before = last(kind);
        Last next = new Last(before.number + 1, before.width, true);
        last.put(kind.name(), next);
        return kind.idPrefix() + String.format("%0" + next.width + "d", next.number);
    }

    /** Somebody gave a record this number. */
    void given(Kind<?> kind, String id) {
        OptionalLong number = number(kind, id);
        if (number.isPresent() && number.getAsLong() > last(kind).number) {
            int width = id.length() - kind.idPrefix().length();
            last.put(kind.name(), new Last(number.getAsLong(), width, true));
        }
    }

    private static OptionalLong number(Kind<?> kind, String id) {
        String prefix = kind.idPrefix();
        int digits = id.length() - prefix.length();
        boolean counted = !prefix.isEmpty()
                && digits > 0
                && digits <= MOST_DIGITS
                && id.startsWith(prefix)
                && id.chars().skip(prefix.length()).allMatch(c -> c >= '0' && c <= '9');
        return counted ? OptionalLong.of(Long.parseLong(id.substring(prefix.length()))) : OptionalLong.empty();
    }

    private Last last(Kind<?> kind) {
        return last.computeIfAbsent(
                kind.name(),
                name -> query.first(
                                "select last, width from number_given where kind = ?",
                                r -> new Last(r.getLong(1), r.getInt(2), false),
                                name)
                        .orElse(new Last(0, WIDTH, false)));
    }

    void keep(Sums sums) throws SQLException {
        for (Map.Entry<String, Last> entry : last.entrySet()) {
            Last now = entry.getValue();
            if (now.fresh) {
                query.change(
                        "insert into number_given (kind, last, width, sum) values (?, ?, ?, ?) on conflict (kind) do"
                                + " update set last = excluded.last, width = excluded.width, sum = excluded.sum",
                        entry.getKey(),
                        now.number,
                        now.width,
                        sums.of(entry.getKey(), now.number, now.width));
            }
        }
    }
}
