package hornbook.viewer.supply;

import hornbook.shared.shop.Counted;
import hornbook.shared.supply.SupplierCard;
import hornbook.viewer.ask.AskForm;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Every supplier with how long it takes; the open one beside the list. */
public final class SupplierList extends BorderPane {
    private final SuppliersModel model;
    private final VBox list = new VBox();
    private final VBox open = new VBox();
    private final AskForm form;
    private final Label trouble = Words.text("", "stop");

    public SupplierList(SuppliersModel model) {
        this.model = model;
        form = new AskForm(model::answer, model::back);
        ScrollPane scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("restock-scroll");
        list.getStyleClass().add("restock-lines");
        open.getStyleClass().addAll("card-pane", "beside");
        HBox top = new HBox(button("supplier-new", "New supplier", model::askNew));
        top.getStyleClass().add("restock-bar");
        setTop(new VBox(top, trouble));
        setCenter(scroll);
        model.onChange(this::draw);
    }

    private void draw(SuppliersView view) {
        trouble.setText(view.trouble() == null ? "" : Words.sentence(view.trouble()));
        trouble.setVisible(view.trouble() != null);
        trouble.setManaged(view.trouble() != null);
        list.getChildren().setAll(view.suppliers().stream().map(this::tile).toList());
        if (view.suppliers().isEmpty()) {
            list.getChildren()
                    .add(Words.text(
                            "No supplier is written down yet: press New supplier. Then goods can be"
                                    + " ordered there, and come in.",
                            "said"));
        }
        open.getChildren().clear();
        view.open().filter(supplier -> view.ask() == null).ifPresent(this::draw);
        open.getChildren().add(form);
        form.show(view.ask());
        setRight(view.open().isPresent() || view.ask() != null ? open : null);
    }

    private Tile tile(SupplierCard supplier) {
        VBox words = new VBox(Words.text(supplier.name(), "lot-title"), Words.text(takes(supplier), "quiet"));
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMinWidth(0);
        Label verdict = Words.text(supplier.verdict(), supplier.verdict().equals("avoid") ? "stop" : "quiet");
        verdict.setMinWidth(USE_PREF_SIZE);
        Tile tile = new Tile(() -> model.choose(supplier.id()), words, verdict);
        tile.setId("supplier-" + supplier.id());
        tile.getStyleClass().addAll("link", "coming-order");
        tile.setAccessibleText(supplier.name() + ", " + takes(supplier) + ", " + supplier.verdict());
        return tile;
    }

    private static String takes(SupplierCard supplier) {
        Integer days = supplier.typicalDays();
        return days == null
                ? "no delivery on record"
                : days == 0 ? "has it the same day" : "takes " + Counted.of(days, "day") + " or so";
    }

    private void draw(SupplierCard supplier) {
        add(supplier.name(), "card-title");
        add(supplier.place(), "quiet");
        add(
                supplier.days().isEmpty()
                        ? "No delivery on record."
                        : "Days from order to arrival: "
                                + supplier.days().stream().map(String::valueOf).collect(Collectors.joining(" ")),
                "words");
        add(supplier.packs().isBlank() ? "" : "Packs: " + supplier.packs(), "words");
        add(
                supplier.smallestOrder() == null
                        ? ""
                        : "Smallest order: " + supplier.smallestOrder().toPlainString(),
                "words");
        add(supplier.verdict().isBlank() ? "" : Words.sentence(supplier.verdict()) + " " + supplier.why(), "words");
        add("Lots bought there: " + supplier.lots() + ". Orders on their way: " + supplier.orders() + ".", "quiet");
        FlowPane acts = new FlowPane(
                button("supplier-change", "Put it right", model::askChange),
                button("supplier-verdict", "Buy again?", model::askVerdict),
                button("supplier-retire", "Nothing more from them", model::retire));
        acts.getStyleClass().add("acts");
        open.getChildren().add(acts);
    }

    private void add(String words, String style) {
        if (!words.isBlank()) {
            open.getChildren().add(Words.text(words, style));
        }
    }

    private static Button button(String id, String words, Runnable act) {
        Button button = new Button(words);
        button.setId(id);
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(pressed -> act.run());
        return button;
    }
}
