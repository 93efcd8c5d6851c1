package hornbook.viewer.restock;

import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.order.OrderPaper;
import hornbook.viewer.paper.order.OrderSheet;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.Supplier;

/** Asks where the order list is to be written, and knows how. */
public final class SaveAs {
    private final BiFunction<String, String, Optional<Path>> ask;
    private final String shop;
    private final Supplier<LocalDate> today;

    /**
     * For one shop.
     *
     * @param ask for a file, given a name to start from and its ending; empty where the person thought better of it
     * @param shop its name, which suppliers read
     */
    public SaveAs(BiFunction<String, String, Optional<Path>> ask, String shop, Supplier<LocalDate> today) {
        this.ask = ask;
        this.shop = shop;
        this.today = today;
    }

    void csv(BiConsumer<Path, Saving> save) {
        ask.apply("order-" + today.get(), "csv")
                .ifPresent(file -> save.accept(file, (answer, orders, to) -> OrderSheet.write(orders, to)));
    }

    void pdf(BiConsumer<Path, Saving> save) {
        ask.apply("order-" + today.get(), "pdf")
                .ifPresent(file -> save.accept(
                        file,
                        (answer, orders, to) ->
                                new OrderPaper(PaperSize.A4, shop, today.get()).print(answer, orders, to)));
    }
}
