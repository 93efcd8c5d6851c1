package hornbook.viewer.welcome;

import hornbook.shared.exchange.ImportReport;
import hornbook.shared.exchange.Refusal;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Access;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What can be done where there is no shop yet, without a widget. */
public final class WelcomeModel {
    private static final int REFUSALS_TOLD = 5;

    private final Work work;
    private final Path shop;
    private final Path demo;
    private final Consumer<Workshop> opened;
    private Consumer<WelcomeView> listener = view -> {};
    private WelcomeView view;

    /**
     * @param shop where a shop of one's own is to be
     * @param demo where the demonstration shop is to be
     * @param trouble why the shop that was asked for cannot be opened; empty where there simply is none
     * @param opened takes the opened shop
     */
    public WelcomeModel(Work work, Path shop, Path demo, String trouble, Consumer<Workshop> opened) {
        this.work = work;
        this.shop = shop;
        this.demo = demo;
        this.opened = opened;
        this.view = WelcomeView.waiting(shop, trouble);
    }

    WelcomeView view() {
        return view;
    }

    void onChange(Consumer<WelcomeView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /** An empty shop of one's own. */
    void makeEmpty() {
        start("Making an empty shop in " + shop, () -> Workshop.open(shop, Access.WRITE, Optional.empty()));
    }

    /** The invented shop, to try things on. */
    void openDemo() {
        start("Laying out the demonstration shop in " + demo, () -> {
            Workshop made = DemoShop.in(demo);
            made.search();
            return made;
        });
    }

    /** A shop of one's own, filled from a folder of exchange files. */
    void importFrom(Path folder) {
        show(view.busy("Reading " + folder));
        work.write(progress -> taken(folder), new Ends<>(this::imported, this::failed));
    }

    private Taken taken(Path folder) {
        Workshop made = Workshop.open(shop, Access.WRITE, Optional.empty());
        try {
            return new Taken(made, made.importing().from(folder, false));
        } catch (RuntimeException refused) {
            made.close();
            throw refused;
        }
    }

    private record Taken(Workshop workshop, ImportReport report) {}

    private void imported(Taken taken) {
        ImportReport report = taken.report();
        if (report.refused().isEmpty()) {
            opened.accept(taken.workshop());
        } else {
            show(view.imported(told(report), () -> opened.accept(taken.workshop())));
        }
    }

    private static String told(ImportReport report) {
        List<Refusal> refused = report.refused();
        Stream<String> first = refused.stream().limit(REFUSALS_TOLD).map(WelcomeModel::told);
        String more = refused.size() > REFUSALS_TOLD ? "\nand " + (refused.size() - REFUSALS_TOLD) + " more" : "";
        return report.taken() + " of " + report.read() + " rows taken. Refused:\n"
                + first.collect(Collectors.joining("\n")) + more;
    }

    private static String told(Refusal refusal) {
        String row = refusal.row() == 0 ? "" : ", row " + refusal.row();
        String field = refusal.field() == null ? "" : ", " + refusal.field();
        return refusal.file() + row + field + ": " + refusal.why();
    }

    private void start(String doing, Supplier<Workshop> making) {
        show(view.busy(doing));
        work.write(progress -> making.get(), new Ends<>(opened, this::failed));
    }

    private void failed(Throwable thrown) {
        boolean told = thrown instanceof BadInput || thrown instanceof hornbook.shared.shop.ShopUnavailable;
        String words = String.valueOf(thrown.getMessage());
        show(WelcomeView.waiting(shop, told ? words : "This is a fault of Hornbook's own: " + words));
    }

    private void show(WelcomeView now) {
        view = now;
        listener.accept(now);
    }
}
