package hornbook.indexer.index;

import hornbook.indexer.card.RecordKey;
import hornbook.indexer.card.RecordKey.Source;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.PartUsed;
import hornbook.shared.shop.ShopRecord;
import hornbook.shared.shop.ShopTool;
import hornbook.shared.store.Books;
import hornbook.shared.store.Change;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Which cards a change of the books touches: that of the record itself and of those that show something of it. */
final class Dependents {
    private final Books books;
    private final Function<String, String> liesInIndex;
    private final Set<RecordKey> keys = new LinkedHashSet<>();

    /** @param liesInIndex where the index believes a lot or tool to lie, empty if it does not know */
    Dependents(Books books, Function<String, String> liesInIndex) {
        this.books = books;
        this.liesInIndex = liesInIndex;
    }

    Set<RecordKey> of(List<Change> changes) {
        changes.forEach(this::add);
        return keys;
    }

    private void add(Change change) {
        String id = change.id();
        switch (change.kind()) {
            case "cabinet" -> cabinet(id);
            case "drawer" -> inside(Source.DRAWER, "drawer", id);
            case "place" -> inside(Source.PLACE, "place", id);
            case "lot" -> lot(id);
            case "movement" ->
                books.find(Movement.class, id).ifPresent(m -> keys.add(new RecordKey(Source.LOT, m.lot())));
            case "tool" -> tool(id);
            case "member" -> keys.add(new RecordKey(Source.ENTRY, id.substring(0, id.indexOf('/'))));
            case "horn" -> horn(id);
            case "job" -> keys.add(new RecordKey(Source.JOB, id));
            case "finding" -> job(Finding.class, id, Finding::job);
            case "part-used" -> job(PartUsed.class, id, PartUsed::job);
            case "supplier" -> keys.add(new RecordKey(Source.SUPPLIER, id));
            default -> {}
        }
    }

    private void cabinet(String id) {
        keys.add(new RecordKey(Source.CABINET, id));
        books.where(Drawer.class, "cabinet", id).forEach(drawer -> inside(Source.DRAWER, "drawer", drawer.id()));
    }

    private void inside(Source kind, String column, String id) {
        keys.add(new RecordKey(kind, id));
        books.where(Lot.class, column, id).forEach(lot -> keys.add(new RecordKey(Source.LOT, lot.id())));
        books.where(ShopTool.class, column, id).forEach(tool -> keys.add(new RecordKey(Source.ENTRY, tool.id())));
    }

    private void lot(String id) {
        keys.add(new RecordKey(Source.LOT, id));
        lies(liesInIndex.apply(id));
        books.find(Lot.class, id).ifPresent(lot -> lies(lot.lies()));
    }

    private void tool(String id) {
        keys.add(new RecordKey(Source.ENTRY, id));
        lies(liesInIndex.apply(id));
        books.find(ShopTool.class, id).ifPresent(tool -> {
            lies(tool.drawer() == null ? "" : tool.drawer());
            lies(tool.place() == null ? "" : tool.place());
        });
    }

    private void lies(String where) {
        if (!where.isEmpty()) {
            keys.add(new RecordKey(books.find(Drawer.class, where).isPresent() ? Source.DRAWER : Source.PLACE, where));
        }
    }

    private void horn(String id) {
        keys.add(new RecordKey(Source.HORN, id));
        books.where(Job.class, "horn", id).forEach(job -> keys.add(new RecordKey(Source.JOB, job.id())));
    }

    /** What was retired still says whose it was. */
    private <T extends ShopRecord> void job(Class<T> type, String id, Function<T, String> of) {
        books.evenRetired(type, id).map(of).ifPresent(job -> keys.add(new RecordKey(Source.JOB, job)));
    }
}
