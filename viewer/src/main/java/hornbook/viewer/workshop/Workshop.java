package hornbook.viewer.workshop;

import hornbook.catalogue.diagnose.Diagnose;
import hornbook.catalogue.edit.EntryBook;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.estimate.Estimate;
import hornbook.catalogue.estimate.Honesty;
import hornbook.catalogue.exchange.KnowledgeSheets;
import hornbook.catalogue.exchange.KnownNames;
import hornbook.catalogue.hornmap.HornMaps;
import hornbook.catalogue.hornmap.Lessons;
import hornbook.catalogue.hornmap.Usuals;
import hornbook.catalogue.identify.Confirm;
import hornbook.catalogue.identify.Identify;
import hornbook.catalogue.may.May;
import hornbook.catalogue.pack.Packs;
import hornbook.catalogue.spring.Springs;
import hornbook.indexer.brief.Brief;
import hornbook.indexer.fit.Fit;
import hornbook.indexer.index.ShopIndex;
import hornbook.indexer.search.Search;
import hornbook.shared.exchange.Export;
import hornbook.shared.exchange.Import;
import hornbook.shared.exchange.SheetImport;
import hornbook.shared.job.AfterCare;
import hornbook.shared.job.Clocks;
import hornbook.shared.job.Closing;
import hornbook.shared.job.Intake;
import hornbook.shared.job.JobBook;
import hornbook.shared.job.Jobs;
import hornbook.shared.job.MapBook;
import hornbook.shared.job.PlannedWork;
import hornbook.shared.job.StandingBook;
import hornbook.shared.job.UsualWork;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.pads.Pads;
import hornbook.shared.photo.Photos;
import hornbook.shared.restock.OrderBook;
import hornbook.shared.restock.Restock;
import hornbook.shared.restock.RestockQuestion;
import hornbook.shared.setting.Setting;
import hornbook.shared.setting.SettingBook;
import hornbook.shared.shop.BadInput;
import hornbook.shared.stock.Alike;
import hornbook.shared.stock.BagBook;
import hornbook.shared.stock.CabinetBook;
import hornbook.shared.stock.DrawerBook;
import hornbook.shared.stock.Furniture;
import hornbook.shared.stock.LookThrough;
import hornbook.shared.stock.OpenJobs;
import hornbook.shared.stock.PlaceBook;
import hornbook.shared.stock.Stock;
import hornbook.shared.stock.StockBook;
import hornbook.shared.stock.ToolBook;
import hornbook.shared.stock.Tools;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import hornbook.shared.supply.SupplierBook;
import hornbook.shared.supply.Suppliers;
import hornbook.shared.year.Year;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** An opened shop and the services over it. What a command does not ask for is not opened. */
public final class Workshop implements AutoCloseable {
    private final Books books;
    private @Nullable Catalogue catalogue;
    private @Nullable Identify identify;
    private @Nullable ShopIndex index;
    private @Nullable Restock restock;
    private @Nullable StandardSizes sizes;

    private Workshop(Books books) {
        this.books = books;
        books.onCommit(changes -> {
            if (changes.stream().anyMatch(change -> change.kind().equals("entry"))) {
                forgetCatalogue();
            }
        });
    }

    private synchronized void forgetCatalogue() {
        catalogue = null;
        identify = null;
    }

    /** Opens a shop; today is taken from its clock unless given. */
    public static Workshop open(Path folder, Access access, Optional<LocalDate> today) {
        return new Workshop(
                today.map(day -> Books.open(folder, access, day)).orElseGet(() -> Books.open(folder, access)));
    }

    public Books books() {
        return books;
    }

    /** What the shop is called; the program's own name where it has none. */
    public String name() {
        return Setting.NAME.text(books).orElse(Setting.NAME.usual());
    }

    /** How the shop is set. */
    public SettingBook settings() {
        return new SettingBook(books);
    }

    public Stock stock() {
        return new Stock(books);
    }

    public StockBook stockBook() {
        return new StockBook(books);
    }

    /** Grab bags, and what is found in them. */
    public BagBook bagBook() {
        return new BagBook(books);
    }

    /** Where pieces like one in hand lie. */
    public Alike alike() {
        return new Alike(books, sizes().reader());
    }

    public Furniture furniture() {
        return new Furniture(books);
    }

    public DrawerBook drawerBook() {
        return new DrawerBook(books);
    }

    public LookThrough lookThrough() {
        return new LookThrough(books);
    }

    public PlaceBook placeBook() {
        return new PlaceBook(books);
    }

    public CabinetBook cabinetBook() {
        return new CabinetBook(books);
    }

    /** Which jobs a part may be taken for. */
    public OpenJobs openJobs() {
        return new OpenJobs(books);
    }

    public Tools tools() {
        return new Tools(books);
    }

    public ToolBook toolBook() {
        return new ToolBook(books);
    }

    public Jobs jobs() {
        return new Jobs(books);
    }

    public JobBook jobBook() {
        return new JobBook(books);
    }

    public Intake intake() {
        return new Intake(books);
    }

    /** What soaks, and where the pieces of a horn are. */
    public StandingBook standingBook() {
        return new StandingBook(books, called -> stock().drawer(called).isPresent());
    }

    public Closing closing() {
        return new Closing(books);
    }

    /** What comes after a job is closed. */
    public AfterCare afterCare() {
        return new AfterCare(books);
    }

    /** The maps of horns, key by key. */
    public MapBook mapBook() {
        return new MapBook(books);
    }

    /** What this shop usually does and uses. */
    public PlannedWork plannedWork() {
        return new PlannedWork(books);
    }

    public UsualWork usualWork() {
        return new UsualWork(books);
    }

    public Photos photos() {
        return new Photos(books);
    }

    /** @throws BadInput where that is called a cup and is none */
    public void refuseNoCup(String id) {
        if (id.startsWith("cup-") && !catalogue().cups().containsKey(id)) {
            throw new BadInput("there is no cup “" + id + "”: look it up with “hornbook find cup”");
        }
    }

    public Clocks clocks() {
        return new Clocks(books);
    }

    /** Whose hands: as told, else who clocked most, which is the shop's owner. */
    public String worker(@Nullable String told) {
        if (told != null && !told.matches("\\p{L}[\\p{L}\\d.]{0,7}")) {
            throw new BadInput("those are no initials: write who worked as N.O., and never a name");
        }
        return told != null ? told : clocks().usual();
    }

    /** The standards' tables, read on first use. */
    public synchronized StandardSizes sizes() {
        if (sizes == null) {
            sizes = StandardSizes.load();
        }
        return sizes;
    }

    /** What is known: shipped, and the shop's own. */
    public synchronized Catalogue catalogue() {
        if (catalogue == null) {
            catalogue = Catalogue.open(entries());
        }
        return catalogue;
    }

    /** The one search box. Its index is opened on first use, made anew where it must be. */
    public Search search() {
        return new Search(index());
    }

    /** The index behind the search box. */
    public synchronized ShopIndex index() {
        if (index == null) {
            index = ShopIndex.open(books, this::catalogueAnew, () -> sizes().reader());
        }
        return index;
    }

    private synchronized Catalogue catalogueAnew() {
        forgetCatalogue();
        return catalogue();
    }

    /** What names of makes, models, tasks and things mean. */
    public KnownNames names() {
        return new KnownNames(catalogue());
    }

    public Import importing() {
        return new Import(books, new KnowledgeSheets(catalogue()));
    }

    public SheetImport importingSheets() {
        return new SheetImport(books, sizes().reader(), names());
    }

    public Export exporting() {
        return new Export(books, new KnowledgeSheets(catalogue()));
    }

    /** Kept as long as the entries stay as they are: what the shop's horns taught takes a while to gather. */
    public synchronized Identify identify() {
        if (identify == null) {
            identify = new Identify(catalogue(), books);
        }
        return identify;
    }

    /** The shop's own entries, written. */
    public EntryBook entryBook() {
        return new EntryBook(catalogue(), books);
    }

    public Confirm confirm() {
        return new Confirm(catalogue(), books);
    }

    public Packs packs() {
        return new Packs(books, catalogue());
    }

    /** The maps of horns, cup by cup. */
    public HornMaps hornMaps() {
        return new HornMaps(catalogue(), books, sizes().reader());
    }

    /** What is usual for a reading. */
    public Usuals usuals() {
        return new Usuals(catalogue());
    }

    /** What jobs teach the entries of their horns' models. */
    public Lessons lessons() {
        return new Lessons(catalogue(), books);
    }

    public May may() {
        return new May(catalogue());
    }

    public Brief brief() {
        return new Brief(catalogue(), books, identify(), may());
    }

    public Springs springs() {
        return new Springs(catalogue(), StandardSizes.load());
    }

    public Fit fit() {
        return new Fit(books, catalogue(), StandardSizes.load().reader());
    }

    public Pads pads() {
        return new Pads(books, sizes().reader());
    }

    public synchronized Restock restock() {
        if (restock == null) {
            restock = new Restock(books);
        }
        return restock;
    }

    /** Who sells to the shop. */
    public Suppliers suppliers() {
        return new Suppliers(books);
    }

    public SupplierBook supplierBook() {
        return new SupplierBook(books);
    }

    /** What is written down about buying. */
    public OrderBook orderBook() {
        return new OrderBook(books);
    }

    /** What open jobs want, and how long supplies keep: what restock is asked with. */
    public RestockQuestion wanted() {
        return new OpenWants(books, catalogue(), pads()).question();
    }

    public Diagnose diagnose() {
        return new Diagnose(catalogue(), books);
    }

    public Year year() {
        return new Year(books);
    }

    public Honesty honesty() {
        return new Honesty(books, catalogue());
    }

    public Estimate estimate() {
        return new Estimate(books, catalogue());
    }

    private Path entries() {
        return books.folder().resolve("entries");
    }

    @Override
    public synchronized void close() {
        if (index != null) {
            index.close();
        }
        books.close();
    }
}
