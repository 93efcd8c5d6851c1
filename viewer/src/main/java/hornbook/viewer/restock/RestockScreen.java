package hornbook.viewer.restock;

import hornbook.shared.restock.OnTheWay;
import hornbook.viewer.supply.SupplierList;
import hornbook.viewer.supply.SuppliersModel;
import hornbook.viewer.widget.Words;
import hornbook.viewer.window.Screen;
import hornbook.viewer.window.ScreenName;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** What runs out, from whom to order, what is on its way, goods in. */
public final class RestockScreen implements Screen {
    private static final Set<String> TOUCHES =
            Set.of("lot", "movement", "order", "supplier", "job", "finding", "pad-used", "setting");

    private final RestockModel model;
    private final BorderPane root = new BorderPane();
    private final Label title = Words.text("What to order", "title");
    private final Label said = Words.text("", "strip");
    private final Label trouble = Words.text("", "stop");
    private final Button stop = button("restock-stop", "Stop");
    private final HBox busy = new HBox(Words.text("Reckoning what runs out…", "said"), stop);
    private final ListPane list;
    private final SuppliersModel suppliers;
    private final SupplierList supplierList;
    private final Button who = button("restock-suppliers", "Suppliers…");
    private final ComingPane coming;
    private final ScrollPane beside;
    private final UnpackPane unpack;
    private final ScrollPane sheet;

    private @Nullable OnTheWay unpacking;
    private @Nullable RestockList drawn;

    /**
     * Draws one model.
     *
     * @param suppliers who sells to the shop
     * @param pull shows a drawer in its cabinet
     * @param files asks the person for a file and saves the list there
     * @param settings shows how the shop is set
     */
    public RestockScreen(
            RestockModel model, SuppliersModel suppliers, Consumer<String> pull, SaveAs files, Runnable settings) {
        this.model = model;
        this.suppliers = suppliers;
        supplierList = new SupplierList(suppliers);
        list = new ListPane(model::ordered, pull);
        coming = new ComingPane(model::unpack);
        beside = new ScrollPane(coming);
        unpack = new UnpackPane(model::take, () -> model.unpack(null));
        sheet = new ScrollPane(unpack);
        for (ScrollPane right : List.of(beside, sheet)) {
            right.setFitToWidth(true);
            right.getStyleClass().addAll("restock-scroll", "beside");
        }
        root.getStyleClass().add("restock");
        root.getStylesheets()
                .add(Objects.requireNonNull(RestockScreen.class.getResource("restock.css"))
                        .toExternalForm());
        stop.setOnAction(pressed -> model.stop());
        root.setTop(top(files, settings));
        root.setCenter(list);
        root.setRight(beside);
        model.onChange(this::draw);
    }

    private Node top(SaveAs files, Runnable settings) {
        Button csv = button("restock-csv", "Save as CSV…");
        csv.setOnAction(pressed -> files.csv(model::save));
        Button pdf = button("restock-pdf", "Print as PDF…");
        pdf.setOnAction(pressed -> files.pdf(model::save));
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        Button set = button("restock-settings", "How it is reckoned…");
        set.setAccessibleHelp("Service level, days between looks, what an order costs: on the screen In and out");
        set.setOnAction(pressed -> settings.run());
        who.setAccessibleHelp("Who sells to the shop, how long it takes, whether to buy there again");
        who.setOnAction(pressed -> suppliers(root.getCenter() != supplierList));
        HBox bar = new HBox(title, who, set, csv, pdf);
        bar.getStyleClass().add("restock-bar");
        busy.getStyleClass().add("supplier-head");
        return new VBox(bar, said, trouble, busy);
    }

    /** Shows who sells, in place of what is to be ordered; or the list again. */
    private void suppliers(boolean shown) {
        root.setCenter(shown ? supplierList : list);
        root.setRight(shown ? null : unpacking == null ? beside : sheet);
        title.setText(shown ? "Suppliers" : "What to order");
        who.setText(shown ? "What to order" : "Suppliers…");
        if (shown) {
            suppliers.refresh();
        }
    }

    private static Button button(String id, String words) {
        Button button = new Button(words);
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        return button;
    }

    @Override
    public ScreenName name() {
        return ScreenName.RESTOCK;
    }

    @Override
    public Node node() {
        return root;
    }

    @Override
    public void shown() {
        model.refresh();
    }

    @Override
    public void takeKeyboard() {
        if (unpacking == null) {
            list.requestFocus();
        } else {
            unpack.focus();
        }
    }

    @Override
    public void changed(Set<String> kinds) {
        if (kinds.stream().anyMatch(TOUCHES::contains)) {
            model.refresh();
            suppliers.refresh();
        }
    }

    @Override
    public boolean back() {
        if (root.getCenter() == supplierList) {
            if (!suppliers.back()) {
                suppliers(false);
            }
            return true;
        }
        boolean open = unpacking != null;
        if (open) {
            model.unpack(null);
        }
        return open;
    }

    private void draw(RestockView view) {
        // A list that is there stays in view while it is asked for anew: no flicker.
        present(busy, view.busy() && view.list() == null);
        present(said, view.said() != null);
        said.setText(Objects.requireNonNullElse(view.said(), ""));
        boolean here = view.unpacking() == null;
        present(trouble, here && view.trouble() != null);
        trouble.setText(view.trouble() == null ? "" : Words.sentence(view.trouble()));
        if (view.list() != null && !view.list().equals(drawn)) {
            drawn = view.list();
            list.show(view);
            coming.show(view.list() == null ? List.of() : view.list().coming());
        }
        unpack(view);
    }

    private void unpack(RestockView view) {
        OnTheWay order = view.unpacking();
        boolean another =
                order != null && (unpacking == null || !unpacking.order().equals(order.order()));
        unpacking = order;
        if (order != null) {
            unpack.show(order, another, view.trouble());
        }
        if (root.getCenter() != supplierList) {
            root.setRight(order == null ? beside : sheet);
        }
        if (another) {
            Platform.runLater(unpack::focus);
        }
    }

    private static void present(Node node, boolean there) {
        node.setVisible(there);
        node.setManaged(there);
    }
}
