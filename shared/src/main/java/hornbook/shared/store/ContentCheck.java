package hornbook.shared.store;

import hornbook.shared.shop.Kind;
import hornbook.shared.shop.ShopRecord;
import hornbook.shared.shop.ShopUnavailable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Is the content what the deeds put in? Each row against its sum, all rows of a kind against the chain of deeds. */
final class ContentCheck {
    private final Query query;
    private final @Nullable Path folder;
    private final Sums sums = new Sums();
    private final List<Problem> found = new ArrayList<>();
    private final Map<String, Long> totals = new HashMap<>();

    ContentCheck(Query query, @Nullable Path folder) {
        this.query = query;
        this.folder = folder;
    }

    /** The books without the files that lie beside them. */
    static ContentCheck alone(Query query) {
        return new ContentCheck(query, null);
    }

    List<Problem> problems() {
        for (Kind<? extends ShopRecord> kind : Kind.KEPT) {
            attempt(kind.name(), () -> rows(kind.name(), Table.of(kind.type())));
        }
        attempt("setting", () -> sums("setting", "name", "name || char(31) || value"));
        attempt("entry", () -> sums("entry", "path", "path || char(31) || coalesce(content, '')"));
        attempt("number_given", () -> numbers());
        attempt("deed", () -> deeds());
        attempt("balance", this::balances);
        if (folder != null) {
            Path shop = folder;
            // Not in a copy: a backup of books that forgot a line is still a good backup.
            attempt("balance", () -> found.addAll(Overdrawn.problems(query)));
            attempt("entries", () -> found.addAll(new EntryCheck(query, shop).problems()));
            attempt("photos", () -> found.addAll(PhotoCheck.problems(query, shop)));
        }
        return found;
    }

    private void attempt(String where, Runnable look) {
        try {
            look.run();
        } catch (ShopUnavailable e) {
            found.add(Damage.of("cannot be read to its end", Opening.FILE + ", " + where));
        }
    }

    private void rows(String kind, Table<?> table) {
        sums(kind, table.name(), "id", table.joined());
    }

    private void sums(String table, String key, String content) {
        sums(table, table, key, content);
    }

    private void sums(String kind, String table, String key, String content) {
        long[] total = {0};
        int before = found.size();
        query.each("select sum, " + key + ", " + content + " from " + table, row -> {
            long kept = row.getLong(1);
            total[0] += kept;
            byte[] bytes = row.getBytes(3);
            if ((bytes == null || sums.of(bytes) != kept) && found.size() - before < Check.MOST_LINES) {
                found.add(Damage.of("changed by itself, not by a deed", kind + " " + row.getString(2)));
            }
        });
        totals.put(kind, total[0]);
    }

    private void numbers() {
        sums("number_given", "kind", "kind || char(31) || last || char(31) || width");
        totals.remove("number_given");
    }

    private void deeds() {
        ChainCheck chain = new ChainCheck(query, sums);
        found.addAll(chain.problems());
        if (!found.isEmpty()) {
            return;
        }
        Map<String, Long> told = chain.totals();
        totals.forEach((kind, total) -> {
            if (!total.equals(told.getOrDefault(kind, 0L))) {
                found.add(Damage.of("rows are missing, or there are some that no deed put there", kind));
            }
        });
    }

    private void balances() {
        List<String> wrong = query.rows(Balances.WRONG, r -> r.getString(1));
        wrong.stream()
                .limit(Check.MOST_LINES)
                .forEach(lot -> found.add(new Problem(
                        "the kept count is not the sum of the ledger",
                        "lot " + lot,
                        "run “hornbook check --repair”, which counts the ledger again")));
    }
}
