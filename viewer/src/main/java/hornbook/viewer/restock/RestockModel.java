package hornbook.viewer.restock;

import hornbook.shared.restock.OnTheWay;
import hornbook.shared.restock.OrderBook;
import hornbook.shared.restock.OrderList;
import hornbook.shared.restock.Restock;
import hornbook.shared.restock.RestockAnswer;
import hornbook.shared.restock.RestockQuestion;
import hornbook.shared.stock.StockBook;
import hornbook.shared.store.Deed;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Progress;
import hornbook.viewer.work.Work;
import java.nio.file.Path;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What the restock screen knows and does, without a widget. */
public final class RestockModel {
    private final Work work;
    private final Latest asking;
    private final Restock restock;
    private final Supplier<RestockQuestion> wanted;
    private final OrderBook book;
    private final StockBook stock;
    private Consumer<RestockView> listener = view -> {};
    private RestockView view = RestockView.NOTHING;

    /**
     * Over one shop.
     *
     * @param wanted what open jobs want; asked beside the window
     */
    public RestockModel(Work work, Restock restock, Supplier<RestockQuestion> wanted, OrderBook book, StockBook stock) {
        this.work = work;
        this.asking = work.latest();
        this.restock = restock;
        this.wanted = wanted;
        this.book = book;
        this.stock = stock;
    }

    RestockView view() {
        return view;
    }

    /** The one who draws; told of each change, and of what there is now. */
    void onChange(Consumer<RestockView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /** Asks for the list again; the first time may take a while in a large shop. */
    void refresh() {
        show(view.asking());
        asking.ask(this::list, new Ends<>(list -> show(view.with(list)), this::failed));
    }

    private RestockList list(Progress progress) {
        RestockQuestion question = wanted.get();
        progress.stopIfCancelled();
        RestockAnswer answer = restock.ask(question);
        progress.stopIfCancelled();
        return new RestockList(answer, restock.orders(answer), restock.onTheWay());
    }

    /** Lets the list under way be forgotten. */
    void stop() {
        asking.cancel();
        show(view.stopped());
    }

    /** All of a supplier's lines went out. */
    void ordered(OrderList order) {
        deed(() -> book.ordered(Objects.requireNonNull(order.supplier()), order.lines()));
    }

    /** Goods of this order are on the bench; none puts the sheet away. */
    void unpack(@Nullable OnTheWay order) {
        show(view.unpacking(order));
    }

    void take(GoodsIn in) {
        OnTheWay order = Objects.requireNonNull(view.unpacking());
        String lot = in.substitute().isBlank() ? order.lot() : in.substitute().strip();
        deed(() -> stock.receive(lot, in.receipt(order.order()), in.judged()));
    }

    /** Writes the order list with one of the ways there are, beside the window. */
    void save(Path file, Saving saving) {
        RestockList list = view.list();
        if (list != null) {
            work.read(
                    progress -> {
                        saving.save(list.answer(), list.orders(), file);
                        return file;
                    },
                    new Ends<>(written -> show(view.said("Written: " + written)), this::failed));
        }
    }

    private void deed(Supplier<Deed> what) {
        work.write(
                progress -> what.get(),
                new Ends<>(
                        done -> {
                            show(view.unpacking(null));
                            refresh();
                        },
                        this::failed));
    }

    private void failed(Throwable thrown) {
        show(view.troubled(String.valueOf(thrown.getMessage())));
    }

    private void show(RestockView now) {
        view = now;
        listener.accept(now);
    }
}
