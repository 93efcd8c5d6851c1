package hornbook.shared.exchange;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Supplier;
import hornbook.shared.store.View;
import hornbook.shared.store.Writing;
import hornbook.shared.supply.LeadDays;
import hornbook.shared.supply.Verdict;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Who sells to the shop, how long it takes, and whether to buy there again. */
final class SupplierRows implements SheetRows {
    private final Map<String, String> known = new HashMap<>();

    SupplierRows(View view) {
        view.all(Supplier.class).forEach(supplier -> known.put(folded(supplier.name()), supplier.id()));
    }

    @Override
    public void take(Writing writing, Cells cells) {
        String name = cells.needed("name");
        String there = known.get(folded(name));
        if (there != null) {
            throw new CellRefused(
                    "name",
                    "“" + name + "” is in the books already as " + there + ": change it with “hornbook supplier change "
                            + there + "”");
        }
        String verdict = verdict(cells.cell("verdict"));
        String why = cells.cell("why");
        if (!verdict.isEmpty() && why.isEmpty()) {
            throw new CellRefused("why", "is empty: a verdict needs its reason, in a sentence");
        }
        String id = writing.nextId(Supplier.class);
        writing.put(new Supplier(
                id, name, cells.cell("place"), days(cells.cell("days")), cells.cell("packs"), verdict, why));
        known.put(folded(name), id);
    }

    private static String days(String cell) {
        try {
            return LeadDays.read(cell.toLowerCase(Locale.ROOT).replaceAll("(?<=\\d) ?(days?|d|tage?|jours?)\\b", ""));
        } catch (BadInput no) {
            throw new CellRefused("days", String.valueOf(no.getMessage()));
        }
    }

    private static String verdict(String cell) {
        Optional<Verdict> said = Arrays.stream(Verdict.values())
                .filter(verdict -> verdict.written().equals(folded(cell).replace('-', ' ')))
                .findFirst();
        if (said.isEmpty() && !cell.isEmpty()) {
            throw new CellRefused(
                    "verdict",
                    "“" + cell + "” is none of "
                            + Arrays.stream(Verdict.values())
                                    .map(Verdict::written)
                                    .collect(Collectors.joining(", ")));
        }
        return said.map(Verdict::written).orElse("");
    }

    private static String folded(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }
}
