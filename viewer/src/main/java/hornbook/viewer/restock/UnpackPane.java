package hornbook.viewer.restock;

import hornbook.shared.restock.OnTheWay;
import hornbook.shared.supply.Verdict;
import hornbook.viewer.widget.Words;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Goods in: how many came of an order, into which lot, and whether to buy them again. */
final class UnpackPane extends VBox {
    private final Label what = Words.text("", "card-title");
    private final Label from = Words.text("", "quiet");
    private final Label trouble = Words.text("", "stop");
    private final TextField pieces = new TextField();
    private final TextField substitute = new TextField();
    private final TextField price = new TextField();
    private final TextField why = new TextField();
    private final ToggleGroup again = new ToggleGroup();
    private final ToggleButton keep = verdict("keep", "Buy again");
    private final ToggleButton avoid = verdict("avoid", "Avoid");

    UnpackPane(Consumer<GoodsIn> take, Runnable close) {
        getStyleClass().addAll("card-pane", "unpack");
        Button in = new Button("Put in");
        in.setId("goods-in");
        in.setDefaultButton(true);
        in.setOnAction(pressed -> take.accept(written()));
        Button not = new Button("Not yet");
        not.setId("goods-not-yet");
        not.setAccessibleHelp("Esc");
        not.setOnAction(pressed -> close.run());
        HBox buttons = new HBox(in, not);
        buttons.getStyleClass().add("pair");
        HBox verdicts = new HBox(keep, avoid);
        verdicts.getStyleClass().add("pair");
        getChildren()
                .addAll(
                        Words.text("Goods in", "heading"),
                        what,
                        from,
                        trouble,
                        field("goods-pieces", "How many came", "what did not come stays on order", pieces),
                        field("goods-lot", "A substitute? Into lot", "as lot-0748, or empty", substitute),
                        field("goods-price", "Price of one", "empty where not known", price),
                        Words.text("Buy these again?", "asks"),
                        verdicts,
                        field("goods-why", "Why", "what a test showed", why),
                        buttons);
    }

    /** Empties the fields where another order than before is unpacked. */
    void show(OnTheWay order, boolean another, @Nullable String wrong) {
        what.setText(order.what());
        from.setText(order.pieces() + " ordered from " + order.supplierName() + " on " + order.orderedOn());
        trouble.setText(wrong == null ? "" : Words.sentence(wrong));
        trouble.setVisible(wrong != null);
        trouble.setManaged(wrong != null);
        if (another) {
            pieces.setText(String.valueOf(order.pieces()));
            substitute.clear();
            price.clear();
            why.clear();
            again.selectToggle(null);
        }
    }

    void focus() {
        pieces.requestFocus();
        pieces.selectAll();
    }

    private GoodsIn written() {
        Verdict verdict = keep.isSelected() ? Verdict.KEEP : avoid.isSelected() ? Verdict.AVOID : null;
        return new GoodsIn(pieces.getText(), substitute.getText(), price.getText(), verdict, why.getText());
    }

    private ToggleButton verdict(String id, String words) {
        ToggleButton button = new ToggleButton(words);
        button.setId("goods-" + id);
        button.setToggleGroup(again);
        return button;
    }

    private static Node field(String id, String asks, String prompt, TextField field) {
        Label label = Words.text(asks, "asks");
        field.setId(id);
        field.setPromptText(prompt);
        field.setAccessibleText(asks);
        label.setLabelFor(field);
        return new VBox(label, field);
    }
}
