package hornbook.shared.store;

import java.sql.SQLException;

/** The kept counts of lots, which only repeat what the ledger says. */
final class Balances {
    /** Lots whose kept count is missing, wrong, or nobody's. */
    static final String WRONG = "with summed as (select lot, sum(qty) as qty from movement group by lot) "
            + "select s.lot from summed s left join balance b on b.lot = s.lot where b.qty is not s.qty "
            + "union all select lot from balance where lot not in (select lot from summed)";

    private Balances() {}

    static void countAgain(Query query) throws SQLException {
        query.change("delete from balance");
        query.change("insert into balance (lot, qty) select lot, sum(qty) from movement group by lot");
    }
}
