package hornbook.viewer.gauges;

import hornbook.catalogue.spring.SpringAnswer;
import hornbook.catalogue.spring.SpringAnswer.Wire;
import hornbook.viewer.gauges.SpringAsked.Field;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;

/** Which needle spring: the old one at the left, what another wire or length does at the right. */
final class SpringPane implements Pane {
    private static final List<String> MEMBERS = List.of("soprano", "alto", "tenor", "baritone");

    private final AskField wire;
    private final Sheet sheet;

    SpringPane(SpringModel model) {
        wire = new AskField("ask-wire", "Wire", "1.00 mm", text -> model.change(a -> a.with(Field.WIRE, text)));
        AskField length =
                new AskField("ask-free", "Length", "45 mm", text -> model.change(a -> a.with(Field.LENGTH, text)));
        AskField toWire = new AskField(
                "ask-to-wire", "Another wire", "1.05", text -> model.change(a -> a.with(Field.TO_WIRE, text)));
        AskField toLength =
                new AskField("ask-to-free", "or length", "", text -> model.change(a -> a.with(Field.TO_LENGTH, text)));
        sheet = new Sheet(
                Words.text("The old spring, away from its bend; free from post face to cradle.", "quiet"),
                pair(wire, length),
                pair(toWire, toLength),
                new AskField("ask-post-hole", "Post hole", "1.1", text -> model.change(a -> a.with(Field.HOLE, text))),
                new AskField("ask-key", "Keys it serves", "low C", text -> model.change(a -> a.with(Field.KEY, text))),
                members(model));
        model.onChange(this::draw);
    }

    private static HBox pair(Node one, Node other) {
        HBox pair = new HBox(one, other);
        pair.getStyleClass().add("pair");
        return pair;
    }

    private static Node members(SpringModel model) {
        FlowPane row = new FlowPane();
        row.getStyleClass().addAll("pair", "members");
        ToggleGroup one = new ToggleGroup();
        for (String member : MEMBERS) {
            ToggleButton button = new ToggleButton(member);
            button.setToggleGroup(one);
            button.setSelected(member.equals(SpringAsked.NOTHING.instrument()));
            button.setOnAction(pressed -> {
                button.setSelected(true);
                model.change(a -> a.on(member));
            });
            row.getChildren().add(button);
        }
        return row;
    }

    @Override
    public String title() {
        return "Springs";
    }

    @Override
    public Node node() {
        return sheet;
    }

    @Override
    public void focus() {
        wire.focus();
    }

    private void draw(SpringView view) {
        List<Node> nodes = new ArrayList<>();
        if (view.trouble() != null) {
            nodes.add(Words.text(view.trouble(), "banner"));
        }
        if (view.answer() != null) {
            draw(view.answer(), nodes);
        }
        sheet.answer(nodes);
    }

    private static void draw(SpringAnswer answer, List<Node> nodes) {
        nodes.add(Words.text(
                String.format(Locale.ROOT, "%.2f g for each millimetre at the tip", answer.gramsPerMm()), "big"));
        if (answer.changePercent() != null) {
            nodes.add(Words.text("The change makes it " + percent(answer.changePercent()) + ".", "thread-name"));
        }
        if (answer.sameStiffness() != null) {
            nodes.add(Words.text("As stiff at the new length: " + answer.sameStiffness() + " mm", "said"));
        }
        answer.usual()
                .forEach(u -> nodes.add(Words.text(
                        "Usual for " + u.keys() + ": " + u.from() + " to " + u.to() + " mm; this one is " + u.stands()
                                + " (" + u.sureness() + ")",
                        "said")));
        answer.remarks().forEach(line -> nodes.add(Words.text(Words.sentence(line), "heed")));
        nodes.add(Sheet.heading("Wires near it"));
        nodes.add(wires(answer.wires()));
    }

    private static Node wires(List<Wire> wires) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("series");
        int row = 0;
        for (Wire wire : wires) {
            grid.add(Words.text(wire.name(), "series-name"), 0, row);
            grid.add(Words.text(percent(wire.changePercent()), "said"), 1, row);
            String hole = wire.goesIn() == null ? "" : wire.goesIn() ? "goes into the hole" : "not for this hole";
            grid.add(Words.text(hole, "sizes"), 2, row++);
        }
        return grid;
    }

    private static String percent(double percent) {
        return percent == 0 ? "the same" : Math.abs(percent) + " % " + (percent > 0 ? "stiffer" : "softer");
    }
}
