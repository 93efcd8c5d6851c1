package hornbook.viewer.gauges;

import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What on hand can be made to fit: what is wanted at the left, plans and refusals at the right. */
final class FitPane implements Pane {
    private final FitModel model;
    private final Consumer<String> pull;
    private final AskField kind;
    private final VBox offered = new VBox();
    private final Sheet sheet;

    /** @param pull shows a drawer in its cabinet */
    FitPane(FitModel model, Consumer<String> pull) {
        this.model = model;
        this.pull = pull;
        kind = new AskField(
                "ask-kind", "What kind of part or supply", "hinge rod", text -> model.change(a -> a.ofKind(text)));
        CheckBox reserve = new CheckBox("Offer the reserve too");
        reserve.setOnAction(pressed -> model.change(a -> a.withReserve(reserve.isSelected())));
        sheet = new Sheet(
                kind,
                offered,
                pair(
                        new AskField(
                                "ask-fit-diameter",
                                "Diameter",
                                "2.38",
                                text -> model.change(a -> a.withDiameter(text))),
                        new AskField("ask-length", "Length", "118", text -> model.change(a -> a.withLength(text)))),
                pair(
                        new AskField("ask-bore", "Bore", "", text -> model.change(a -> a.withBore(text))),
                        new AskField("ask-thread", "Thread", "2-56", text -> model.change(a -> a.withThread(text)))),
                new AskField("ask-model", "For the model", "id or title", text -> model.change(a -> a.onModel(text))),
                reserve);
        offered.getStyleClass().add("offered");
        model.onChange(this::draw);
    }

    private static HBox pair(Node one, Node other) {
        HBox pair = new HBox(one, other);
        pair.getStyleClass().add("pair");
        return pair;
    }

    @Override
    public String title() {
        return "Fit";
    }

    @Override
    public Node node() {
        return sheet;
    }

    @Override
    public void focus() {
        kind.focus();
    }

    @Override
    public void shown() {
        model.refresh();
    }

    private void draw(FitView view) {
        offered.getChildren().setAll(view.offered().stream().map(this::offer).toList());
        List<Node> nodes = new ArrayList<>();
        if (view.trouble() != null) {
            nodes.add(Words.text(view.trouble(), "banner"));
        }
        if (view.answer() != null) {
            nodes.addAll(new FitAnswers(view.answer(), pull).nodes());
        }
        if (view.asked().kind().isBlank()) {
            nodes.add(Words.text("Say what is wanted and its sizes; what is not said is not checked.", "quiet"));
        }
        sheet.answer(nodes);
    }

    private Button offer(PieceKind one) {
        Button button = new Button(one.title());
        button.setMaxWidth(Double.MAX_VALUE);
        button.setOnAction(pressed -> ((TextField) kind.lookup("#ask-kind")).setText(one.title()));
        return button;
    }
}
