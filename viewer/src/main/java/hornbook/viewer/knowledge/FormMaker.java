package hornbook.viewer.knowledge;

import hornbook.catalogue.edit.Field;
import hornbook.catalogue.edit.Shape;
import hornbook.catalogue.edit.Spot;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.BooleanNode;
import tools.jackson.databind.node.StringNode;

/** Makes the fields of one form, whatever the kind: what a field looks like follows from what it holds. */
final class FormMaker {
    private final EditModel model;
    private final Folds folds;
    private final Map<String, FieldRow> rows = new LinkedHashMap<>();
    private final List<Runnable> followers = new ArrayList<>();

    FormMaker(EditModel model, Folds folds) {
        this.model = model;
        this.folds = folds;
    }

    EditModel model() {
        return model;
    }

    Folds folds() {
        return folds;
    }

    /** The fields made so far, by their place. */
    Map<String, FieldRow> rows() {
        return rows;
    }

    /** Lets the fields that have not the keyboard follow what the draft now says. */
    void follow() {
        followers.forEach(Runnable::run);
    }

    List<Node> fields(List<Field> fields, Spot within) {
        List<Node> made = new ArrayList<>();
        for (Field field : fields) {
            made.add(field(field, within.then(field.name())));
        }
        return made;
    }

    private Node field(Field field, Spot spot) {
        String title = field.title() + (field.needed() ? "" : "  (may stay blank)");
        return row(title, field.about(), spot, editor(field.shape(), spot, field.title()));
    }

    /** A row that is told of problems at its place. */
    FieldRow row(String title, String about, Spot spot, Node editor) {
        FieldRow row = new FieldRow(title, about, editor);
        rows.put(spot.dotted(), row);
        return row;
    }

    /** @param title for whoever cannot see what stands above it */
    Node editor(Shape shape, Spot spot, String title) {
        return switch (shape) {
            case Shape.Text text when text.names().isEmpty() -> words(new WordsField(), spot, title);
            case Shape.Text text -> named(text.names(), spot, title);
            case Shape.Figure figure -> figure(spot, title);
            case Shape.Choice choice -> choice(choice.words(), spot, title);
            case Shape.YesNo yesNo -> yesNo(spot, title);
            case Shape.Group group -> group(group, spot);
            case Shape.ListOf list -> new LineList(this, list.each(), spot, title);
            case Shape.ByName byName -> new NameList(this, byName, spot, title);
        };
    }

    VBox group(Shape.Group group, Spot spot) {
        VBox box = new VBox();
        box.getStyleClass().add("field-group");
        box.getChildren().addAll(fields(group.fields(), spot));
        return box;
    }

    private TextInputControl words(TextInputControl field, Spot spot, String title) {
        boolean line = spot.last().matches("[0-9]+");
        typed(field, spot, title, text -> {
            if (line) {
                model.line(spot, text);
            } else {
                model.text(spot, text);
            }
        });
        return field;
    }

    private void typed(TextInputControl field, Spot spot, String title, Consumer<String> told) {
        field.setId("field-" + spot.dotted());
        field.setAccessibleText(title);
        field.setText(now(spot));
        field.textProperty().addListener((of, before, text) -> {
            if (!text.equals(now(spot))) {
                told.accept(text);
            }
        });
        followers.add(() -> {
            if (!field.isFocused() && !field.getText().equals(now(spot))) {
                field.setText(now(spot));
            }
        });
    }

    private String now(Spot spot) {
        return model.view().draft().at(spot).map(Figures::written).orElse("");
    }

    private Node named(List<String> names, Spot spot, String title) {
        TextInputControl field = words(new TextField(), spot, title);
        Label called = Words.text("", "called");
        Runnable call = () -> {
            called.setText(model.called(field.getText()));
            called.setVisible(!called.getText().isEmpty());
            called.setManaged(called.isVisible());
        };
        call.run();
        field.textProperty().addListener((of, before, now) -> call.run());
        return new VBox(field, called, new Offers(field, (typed, found) -> model.offer(names, typed, spot, found)));
    }

    private Node figure(Spot spot, String title) {
        TextField field = new TextField();
        field.getStyleClass().add("figure-field");
        boolean line = spot.last().matches("[0-9]+");
        typed(field, spot, title, text -> model.value(spot, text.isBlank() && !line ? null : Figures.read(text)));
        return field;
    }

    private Node choice(List<String> words, Spot spot, String title) {
        return toggles(words, words.stream().<JsonNode>map(StringNode::valueOf).toList(), spot, title);
    }

    private Node yesNo(Spot spot, String title) {
        return toggles(List.of("yes", "no"), List.of(BooleanNode.TRUE, BooleanNode.FALSE), spot, title);
    }

    /** Pressed again, the pressed one is let go. */
    private Node toggles(List<String> words, List<JsonNode> values, Spot spot, String title) {
        FlowPane flow = new FlowPane();
        flow.getStyleClass().add("toggles");
        ToggleGroup one = new ToggleGroup();
        for (int i = 0; i < words.size(); i++) {
            JsonNode value = values.get(i);
            ToggleButton button = new ToggleButton(words.get(i));
            button.setId("field-" + spot.dotted() + "-" + words.get(i));
            button.setAccessibleText(title + ": " + words.get(i));
            button.setToggleGroup(one);
            button.setSelected(value.equals(at(spot)));
            button.setOnAction(pressed -> model.value(spot, button.isSelected() ? value : null));
            flow.getChildren().add(button);
        }
        return flow;
    }

    @Nullable
    JsonNode at(Spot spot) {
        return model.view().draft().at(spot).orElse(null);
    }
}
