package hornbook.shared.exchange;

import hornbook.shared.shop.BadCell;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Kind;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.ShopRecord;
import hornbook.shared.shop.ToolMember;
import hornbook.shared.store.View;
import hornbook.shared.store.Writing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The rows of an import, sorted into those to take and those refused. */
final class Sheets {
    private record Good(String file, Row row, ShopRecord record) {}

    private final References references;
    private final List<Good> good = new ArrayList<>();
    private final Map<String, Row> outOfUse = new LinkedHashMap<>();
    private final Map<String, String> settings = new LinkedHashMap<>();
    private final List<Refusal> refused;
    private final List<String> remarks;
    private int read;
    private int taken;
    private boolean changed;

    Sheets(View view, List<Refusal> refused, List<String> remarks) {
        this.references = new References(view);
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
        read += file.rows().size()
                + (int) file.refused().stream().filter(r -> r.row() > 0).count();
        if (file.columns().isEmpty()) {
            return;
        }
        List<String> missing =
                kind.key().stream().filter(k -> !file.columns().contains(k)).toList();
        if (!missing.isEmpty()) {
            refuse(Refusal.wholeFile(
                    file.name(),
                    "has no column " + String.join(", ", missing) + ": the first row must name the columns"));
            return;
        }
        file.columns().stream()
                .filter(column -> !kind.columns().names().contains(column) && !column.equals(RowsToFix.WHY))
                .forEach(
                        column -> remarks.add(file.name() + ": column “" + column + "” is not known and was left out"));
        Map<String, Row> seen = new HashMap<>();
        file.rows().forEach(row -> read(kind, file.name(), row, seen));
    }

    /** Which of the records read are out of use. */
    void outOfUse(CsvFile file) {
        refused.addAll(file.refused());
        read += file.rows().size();
        for (Row row : file.rows()) {
            String kind = row.cells().getOrDefault("kind", "");
            String id = row.cells().getOrDefault("id", "");
            if (references.knows(kind, id)) {
                outOfUse.put(kind + " " + id, row);
            } else {
                refuse(file.name(), row, "id", "“" + kind + " " + id + "” is not in this import: leave the row out");
            }
        }
    }

    private <T extends ShopRecord> void read(Kind<T> kind, String file, Row row, Map<String, Row> seen) {
        var broken = references.broken(kind, row.cells());
        if (broken.isPresent()) {
            refuse(file, row, broken.get().column(), broken.get().why());
            return;
        }
        Optional<CellRefused> bent = bent(kind, row);
        if (bent.isPresent()) {
            refuse(file, row, bent.get().field(), bent.get().why());
            return;
        }
        try {
            T record = kind.columns().record(row.inOrder(kind.columns().names()));
            Row before = seen.putIfAbsent(record.id(), row);
            String key = kind.key().getFirst();
            if (row.cells().getOrDefault(key, "").isBlank()) {
                refuse(file, row, key, "is empty: give it a number");
            } else if (before != null) {
                refuse(file, row, key, "is the number of row " + before.number() + " already: give it another");
            } else {
                good.add(new Good(file, row, record));
                references.add(kind, record.id());
            }
        } catch (BadCell e) {
            refuse(file, row, e.column(), e.why());
        } catch (BadInput e) {
            refuse(file, row, null, String.valueOf(e.getMessage()));
        }
    }

    /** A day where a thread or size is to stand is never taken for one. */
    private static Optional<CellRefused> bent(Kind<?> kind, Row row) {
        if (kind.type() == Lot.class) {
            return BentSize.thread(row.cells().getOrDefault("thread", ""))
                    .map(why -> new CellRefused("thread", why))
                    .or(() -> BentSize.size(row.cells().getOrDefault("dimensions", ""))
                            .map(why -> new CellRefused("dimensions", why)));
        }
        return kind.type() == ToolMember.class
                ? BentSize.thread(row.cells().getOrDefault("member", "")).map(why -> new CellRefused("member", why))
                : Optional.empty();
    }

    private void refuse(String file, Row row, @Nullable String field, String why) {
        refuse(new Refusal(file, row.number(), row.line(), field, why));
    }

    /** Puts what was good; what the books turn away after all is refused like the rest. */
    void into(Writing writing, LocalDate today) {
        settings.forEach((name, json) -> setting(writing, name, json));
        good.forEach(row -> put(writing, row));
        LotCounts counts = new LotCounts(writing, today, remarks);
        for (Good row : good) {
            if (row.record() instanceof Lot lot) {
                changed |= counts.agree(lot);
            }
        }
        outOfUse.values().forEach(row -> retire(writing, row));
    }

    private void retire(Writing writing, Row row) {
        Kind<?> kind = Kind.named(row.cells().getOrDefault("kind", ""));
        String id = row.cells().getOrDefault("id", "");
        if (writing.find(kind.type(), id).isPresent()) {
            writing.retire(kind.type(), id);
            changed = true;
        }
        taken++;
    }

    private void setting(Writing writing, String name, String json) {
        try {
            writing.setting(name, json);
            changed = true;
        } catch (BadInput e) {
            refuse(new Refusal(Export.SETTINGS, 0, 0, name, String.valueOf(e.getMessage())));
        }
    }

    private void put(Writing writing, Good row) {
        ShopRecord record = row.record();
        ShopRecord stands = stands(writing, record);
        if (record.equals(stands)) {
            taken++;
        } else if (stands instanceof Movement) {
            refuse(
                    row.file(),
                    row.row(),
                    "id",
                    "stands in the ledger with other words: the ledger is only added to, give it a new number");
        } else {
            try {
                writing.put(record);
                taken++;
                changed = true;
            } catch (BadInput e) {
                refuse(row.file(), row.row(), null, String.valueOf(e.getMessage()));
            }
        }
    }

    private @Nullable ShopRecord stands(Writing writing, ShopRecord record) {
        if (outOfUse.containsKey(Kind.of(record.getClass()).name() + " " + record.id())) {
            return writing.evenRetired(record.getClass(), record.id()).orElse(null);
        }
        return references.stood(record)
                ? writing.find(record.getClass(), record.id()).orElse(null)
                : null;
    }

    /** Did anything go into the books that was not there already? */
    boolean changed() {
        return changed;
    }

    ImportReport report(KnowledgeFiles.Incoming entries) {
        int entriesTaken = entries.read() - entries.refused().size();
        return new ImportReport(
                read + entries.read(), taken + entriesTaken, List.copyOf(refused), List.copyOf(remarks));
    }
}
