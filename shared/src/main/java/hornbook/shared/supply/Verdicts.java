package hornbook.shared.supply;

import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Supplier;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Whether to buy it again. A verdict on a lot's own goods stands in its note as {@code verdict: keep} or {@code verdict:
 * avoid} and goes before the supplier's, as one seller has good and bad goods.
 */
public final class Verdicts {
    /** How a verdict begins in a lot's note. */
    public static final String MARK = "verdict: ";

    private static final String AVOID = "avoid";
    private static final String KEEP = "keep";

    private final Map<String, Supplier> suppliers = new LinkedHashMap<>();
    private final Map<Pattern, Supplier> names = new LinkedHashMap<>();

    public Verdicts(Collection<Supplier> suppliers) {
        for (Supplier supplier : suppliers) {
            this.suppliers.put(supplier.id(), supplier);
            String first = supplier.name().split(" ", -1)[0];
            if (avoided(supplier) && !first.isEmpty()) {
                names.put(Pattern.compile("\\b" + Pattern.quote(first) + "\\b"), supplier);
            }
        }
    }

    /** The lot's supplier, where the books name one. */
    public Optional<Supplier> supplier(Lot lot) {
        return Optional.ofNullable(lot.supplier()).map(suppliers::get);
    }

    public boolean avoided(Lot lot) {
        return avoid(lot).isPresent();
    }

    /** Why these goods are not to be bought, nor counted as stock; nothing where they may. */
    public Optional<String> avoid(Lot lot) {
        String note = lot.note().toLowerCase(Locale.ROOT);
        Optional<Supplier> from = supplier(lot).or(() -> named(lot)).filter(Verdicts::avoided);
        int last = note.lastIndexOf(MARK);
        if (last >= 0) {
            String own = note.substring(last + MARK.length());
            if (own.startsWith(KEEP)) {
                return Optional.empty();
            }
            if (own.startsWith(AVOID)) {
                return Optional.of(from.map(Verdicts::why).orElse("avoid: " + lot.note()));
            }
        }
        return from.map(Verdicts::why);
    }

    public static boolean avoided(Supplier supplier) {
        return supplier.verdict().strip().toLowerCase(Locale.ROOT).startsWith(AVOID);
    }

    private static String why(Supplier supplier) {
        return supplier.name() + ", avoid: " + supplier.why();
    }

    /** Goods without a supplier are still known by the name that somebody wrote on them. */
    private Optional<Supplier> named(Lot lot) {
        String text = lot.title() + " " + lot.note();
        return names.entrySet().stream()
                .filter(name -> name.getKey().matcher(text).find())
                .map(Map.Entry::getValue)
                .findFirst();
    }
}
