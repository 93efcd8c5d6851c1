package hornbook.shared.exchange;

import hornbook.shared.shop.BadCell;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Kind;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.shop.ShopRecord;
import hornbook.shared.store.Books;
import hornbook.shared.store.Writing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The rows of an import, sorted into those to take and those refused. */
final class Sheets {
    private final References references;
    private final Books books;
    private final List<ShopRecord> good = new ArrayList<>();
    private final Map<String, String> settings = new LinkedHashMap<>();
    private final List<Refusal> refused;
    private final List<String> remarks;
    private int read;
    private int standing;

    Sheets(Books books, List<Refusal> refused, List<String> remarks) {
        this.books = books;
        this.references = new References(books);
        this.refused = new ArrayList<>(refused);
        this.remarks = new ArrayList<>(remarks);
    }

    void setting(String name, String json) {
        settings.put(name, json);
    }

    void refuse(Refusal refusal) {
        refused.add(refusal);
    }

    <T extends ShopRecord> void read(Kind<T> kind, CsvFile file) {
        refused.addAll(file.refused());
        read += file.rows().size() + file.refused().size();
        List<String> missing =
                kind.key().stream().filter(k -> !file.columns().contains(k)).toList();
        if (!missing.isEmpty()) {
            refuse(Refusal.wholeFile(
                    file.name(),
                    "has no column " + String.join(", ", missing) + ": the first row must name the columns"));
            return;
        }
        file.columns().stream()
                .filter(column -> !kind.columns().names().contains(column))
                .forEach(
                        column -> remarks.add(file.name() + ": column “" + column + "” is not known and was left out"));
        Map<String, T> before = new HashMap<>();
        books.all(kind.type()).forEach(record -> before.put(record.id(), record));
        file.rows().forEach(row -> read(kind, file.name(), row, before));
    }

    private <T extends ShopRecord> void read(Kind<T> kind, String file, Row row, Map<String, T> before) {
        var broken = references.broken(kind, row.cells());
        if (broken.isPresent()) {
            refuse(new Refusal(
                    file,
                    row.number(),
                    row.line(),
                    broken.get().column(),
                    broken.get().why()));
            return;
        }
        try {
            T record = kind.columns().record(row.inOrder(kind.columns().names()));
            if (record.id().isBlank()) {
                refuse(new Refusal(
                        file, row.number(), row.line(), kind.key().getFirst(), "is empty: give it a number"));
            } else if (Objects.equals(before.get(record.id()), record)) {
                standing++;
            } else if (record instanceof Movement && before.containsKey(record.id())) {
                refuse(new Refusal(
                        file,
                        row.number(),
                        row.line(),
                        "id",
                        "stands in the ledger with other words: the ledger is only added to, give it a new number"));
            } else {
                good.add(record);
                references.add(kind, record.id());
            }
        } catch (BadCell e) {
            refuse(new Refusal(file, row.number(), row.line(), e.column(), e.why()));
        } catch (BadInput e) {
            refuse(new Refusal(file, row.number(), row.line(), null, String.valueOf(e.getMessage())));
        }
    }

    void into(Writing writing, LocalDate today) {
        settings.forEach(writing::setting);
        good.forEach(writing::put);
        good.stream().filter(Lot.class::isInstance).forEach(lot -> count(writing, (Lot) lot, today));
    }

    /** A lot's number is its ledger's sum: where the file counts otherwise, a ledger line says so. */
    private void count(Writing writing, Lot lot, LocalDate today) {
        if (!(lot.count() instanceof Count.Exact(int wanted))) {
            return;
        }
        Count now = writing.find(Lot.class, lot.id()).orElseThrow().count();
        int difference = wanted - (now instanceof Count.Exact(int pieces) ? pieces : 0);
        if (difference == 0) {
            return;
        }
        boolean first = writing.where(Movement.class, "lot", lot.id()).isEmpty();
        if (!first) {
            remarks.add("lots.csv: " + lot.id() + " counts " + wanted + ", its ledger " + (wanted - difference)
                    + ": a correction was written");
        }
        writing.put(new Movement(
                writing.nextId(Movement.class),
                today,
                lot.id(),
                first ? MovementKind.OPENING : MovementKind.CORRECTION,
                difference,
                null,
                null,
                null,
                null,
                null,
                "count at import"));
    }

    ImportReport report(int entriesRead, int entriesTaken) {
        return new ImportReport(
                read + entriesRead, good.size() + standing + entriesTaken, List.copyOf(refused), List.copyOf(remarks));
    }
}
