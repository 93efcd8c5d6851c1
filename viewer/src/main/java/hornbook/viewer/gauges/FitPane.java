package hornbook.viewer.gauges;

import hornbook.viewer.gauges.FitAsked.Field;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What on hand can be made to fit: what is wanted at the left, plans and refusals at the right. */
final class FitPane implements Pane {
    private final FitModel model;
    private final Consumer<String> pull;
    private final AskField kind;
    private final AskField diameter;
    private final AskField length;
    private final AskField bore;
    private final AskField thread;
    private final AskField horn;
    private final VBox offered = new VBox();
    private final Sheet sheet;

    /** @param pull shows a drawer in its cabinet */
    FitPane(FitModel model, Consumer<String> pull) {
        this.model = model;
        this.pull = pull;
        kind = field("ask-kind", "What kind of part or supply", "hinge rod", Field.KIND);
        diameter = field("ask-fit-diameter", "Diameter", "2.38", Field.DIAMETER);
        length = field("ask-length", "Length", "118", Field.LENGTH);
        bore = field("ask-bore", "Bore", "", Field.BORE);
        thread = field("ask-thread", "Thread", "2-56", Field.THREAD);
        horn = field("ask-model", "For the model", "id or title", Field.MODEL);
        CheckBox reserve = new CheckBox("Offer the reserve too");
        reserve.setOnAction(pressed -> model.change(a -> a.withReserve(reserve.isSelected())));
        sheet = new Sheet(kind, offered, pair(diameter, length), pair(bore, thread), horn, reserve);
        offered.getStyleClass().add("offered");
        model.onChange(this::draw);
        model.onFill(asked -> {
            reserve.setSelected(asked.reserve());
            fill(asked);
        });
    }

    private AskField field(String id, String asks, String prompt, Field field) {
        return new AskField(id, asks, prompt, text -> model.change(asked -> asked.with(field, text)));
    }

    private void fill(FitAsked asked) {
        kind.set(asked.at(Field.KIND));
        diameter.set(asked.at(Field.DIAMETER));
        length.set(asked.at(Field.LENGTH));
        bore.set(asked.at(Field.BORE));
        thread.set(asked.at(Field.THREAD));
        horn.set(asked.at(Field.MODEL));
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
        if (view.asked().at(Field.KIND).isBlank()) {
            nodes.add(Words.text(
                    view.asked().at(Field.MODEL).isBlank()
                            ? "Say what is wanted and its sizes; what is not said is not checked."
                            : "For " + view.asked().at(Field.MODEL)
                                    + ": say which part or supply is wanted, and its sizes.",
                    "quiet"));
        }
        sheet.answer(nodes);
    }

    private Button offer(PieceKind one) {
        Button button = new Button(one.title());
        button.setMaxWidth(Double.MAX_VALUE);
        button.setOnAction(pressed -> kind.set(one.title()));
        return button;
    }
}
