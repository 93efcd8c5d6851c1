package hornbook.shared.supply;

import hornbook.shared.setting.Setting;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.OpenOrder;
import hornbook.shared.shop.Supplier;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.FreeId;
import hornbook.shared.store.Writing;
import java.math.BigDecimal;
import java.util.List;

/** What is written down of suppliers. Each call is one deed that can be undone; a refusal changes nothing. */
public final class SupplierBook {
    private final Books books;
    private final Suppliers suppliers;

    public SupplierBook(Books books) {
        this.books = books;
        this.suppliers = new Suppliers(books);
    }

    /**
     * A supplier that is new here.
     *
     * @throws BadInput where it has no name, or that of another
     */
    public Deed add(SupplierSaid said) {
        String name = named(said.name());
        String id = FreeId.of(books, Supplier.class, "sup-v-", name);
        Supplier nothing = new Supplier(id, name, "", "", "", "", "");
        return books.write("a new supplier: " + name, w -> put(w, nothing, said));
    }

    /** What is known of it now. @throws BadInput where nothing is said, or it cannot be so */
    public Deed change(String called, SupplierSaid said) {
        Supplier was = suppliers.named(called);
        if (said.nothing()) {
            throw new BadInput("nothing is said of " + was.name() + ": give what is to change");
        }
        if (said.name() != null && !Suppliers.folded(said.name()).equals(Suppliers.folded(was.name()))) {
            named(said.name());
        }
        return books.write("what is known of " + was.name(), w -> put(w, was, said));
    }

    private String named(@org.jspecify.annotations.Nullable String said) {
        String name = said == null ? "" : said.strip();
        if (name.isEmpty()) {
            throw new BadInput("the supplier has no name: say what it is called");
        }
        books.all(Supplier.class).stream()
                .filter(other -> Suppliers.folded(other.name()).equals(Suppliers.folded(name)))
                .findFirst()
                .ifPresent(other -> {
                    throw new BadInput("there is a supplier “" + other.name() + "” already (" + other.id()
                            + "): change that one, or give this one another name");
                });
        return name;
    }

    private void put(Writing writing, Supplier was, SupplierSaid said) {
        writing.put(new Supplier(
                was.id(),
                SupplierSaid.or(said.name(), was.name()),
                SupplierSaid.or(said.place(), was.place()),
                said.days() == null ? was.leadDaysObserved() : LeadDays.read(said.days()),
                SupplierSaid.or(said.packs(), was.packs()),
                was.verdict(),
                was.why()));
        BigDecimal smallest = said.smallestOrder();
        if (smallest != null) {
            writing.setting(Setting.SMALLEST_ORDER.written(), Setting.SMALLEST_ORDER.with(books, was.id(), smallest));
        }
    }

    /** Nothing more is bought there; what was bought keeps its name. @throws BadInput while an order is on its way */
    public Deed retire(String called) {
        Supplier supplier = suppliers.named(called);
        List<OpenOrder> orders = books.where(OpenOrder.class, "supplier", supplier.id());
        if (!orders.isEmpty()) {
            throw new BadInput("order " + orders.getFirst().orderRef() + " is on its way from " + supplier.name()
                    + ": put its goods in first, or “hornbook undo” the order");
        }
        return books.write("nothing more from " + supplier.name(), w -> w.retire(Supplier.class, supplier.id()));
    }

    /** It is bought from again. @param id its number, as only that is sure once it is out of use */
    public Deed bringBack(String id) {
        String name = books.evenRetired(Supplier.class, id)
                .map(Supplier::name)
                .orElseThrow(() -> new BadInput("there never was a supplier of the number " + id
                        + ": “hornbook undo --list” shows what was done"));
        return books.write("again from " + name, w -> w.bringBack(Supplier.class, id));
    }
}
