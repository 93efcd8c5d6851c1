package hornbook.viewer.welcome;

import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Access;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** What can be done where there is no shop yet, without a widget. */
public final class WelcomeModel {
    private final Work work;
    private final Path shop;
    private final Path demo;
    private final Consumer<Workshop> opened;
    private final Consumer<Workshop> bringingIn;
    private Consumer<WelcomeView> listener = view -> {};
    private WelcomeView view;

    /**
     * @param shop where a shop of one's own is to be
     * @param demo where the demonstration shop is to be
     * @param trouble why the shop that was asked for cannot be opened; empty where there simply is none
     * @param opened takes the opened shop
     * @param bringingIn takes it where lists are to be brought in next
     */
    public WelcomeModel(
            Work work, Path shop, Path demo, String trouble, Consumer<Workshop> opened, Consumer<Workshop> bringingIn) {
        this.bringingIn = bringingIn;
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
        start("Making an empty shop in " + shop, () -> Workshop.open(shop, Access.WRITE, Optional.empty()), opened);
    }

    /** The invented shop, to try things on. */
    void openDemo() {
        start(
                "Laying out the demonstration shop in " + demo,
                () -> {
                    Workshop made = DemoShop.in(demo);
                    made.search();
                    return made;
                },
                opened);
    }

    /** An empty shop, opened where lists are brought in. */
    void bringIn() {
        start("Making a shop in " + shop, () -> Workshop.open(shop, Access.WRITE, Optional.empty()), bringingIn);
    }

    private void start(String doing, Supplier<Workshop> making, Consumer<Workshop> made) {
        show(view.busy(doing));
        work.write(progress -> making.get(), new Ends<>(made, this::failed));
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
