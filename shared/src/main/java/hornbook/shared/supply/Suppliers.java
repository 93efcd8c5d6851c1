package hornbook.shared.supply;

import hornbook.shared.setting.Setting;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.OpenOrder;
import hornbook.shared.shop.Supplier;
import hornbook.shared.store.Books;
import hornbook.shared.store.View;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Who sells to the shop, and whom a person means. */
public final class Suppliers {
    private final Books books;

    public Suppliers(Books books) {
        this.books = books;
    }

    /** Every one, by name. */
    public List<SupplierCard> all() {
        Map<String, BigDecimal> smallest = Setting.SMALLEST_ORDER.bySupplier(books);
        return books.reading(view -> view.all(Supplier.class).stream()
                .sorted(Comparator.comparing(Supplier::name, String.CASE_INSENSITIVE_ORDER))
                .map(supplier -> card(view, supplier, smallest))
                .toList());
    }

    /** The one meant, where there is one. @throws BadInput where several could be meant */
    public Optional<SupplierCard> card(String called) {
        Map<String, BigDecimal> smallest = Setting.SMALLEST_ORDER.bySupplier(books);
        return find(called).map(supplier -> books.reading(view -> card(view, supplier, smallest)));
    }

    private static SupplierCard card(View view, Supplier supplier, Map<String, BigDecimal> smallest) {
        Deliveries deliveries = Deliveries.of(supplier, view.where(Movement.class, "supplier", supplier.id()));
        return new SupplierCard(
                supplier.id(),
                supplier.name(),
                supplier.place(),
                deliveries.days(),
                deliveries.typical().orElse(null),
                supplier.packs(),
                smallest.get(supplier.id()),
                supplier.verdict(),
                supplier.why(),
                view.where(Lot.class, "supplier", supplier.id()).size(),
                view.where(OpenOrder.class, "supplier", supplier.id()).size());
    }

    /**
     * The one meant: by number, by name, or by how its name begins.
     *
     * @throws BadInput where there is none, or several could be meant
     */
    public Supplier named(String called) {
        return find(called)
                .orElseThrow(() -> new BadInput("there is no supplier “" + called
                        + "”: “hornbook supplier” lists those there are, “hornbook supplier new \"" + called
                        + "\"” makes one, as does Suppliers on the screen Restock"));
    }

    private Optional<Supplier> find(String called) {
        String wanted = folded(called);
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        return books.find(Supplier.class, called.strip())
                .or(() -> one(called, name -> name.equals(wanted)))
                .or(() -> one(called, name -> name.startsWith(wanted)));
    }

    private Optional<Supplier> one(String called, Predicate<String> name) {
        List<Supplier> found = books.all(Supplier.class).stream()
                .filter(supplier -> name.test(folded(supplier.name())))
                .toList();
        if (found.size() > 1) {
            throw new BadInput("“" + called + "” may be "
                    + found.stream().map(s -> s.name() + " (" + s.id() + ")").collect(Collectors.joining(", "))
                    + ": name one by its number");
        }
        return found.stream().findFirst();
    }

    static String folded(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
