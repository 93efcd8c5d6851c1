package hornbook.viewer.ask;

import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** Shows a question. Enter does it from any field, Esc leaves it, Up and Down choose while something is written. */
public final class AskForm extends VBox {
    /** So many letters fit into the narrowest panel. */
    private static final int WORDS = 13;

    private static final int DIGITS = 6;

    private final Consumer<Answers> submit;
    private final Runnable cancel;
    private final Label title = Words.text("", "ask-title");
    private final Label trouble = Words.text("", "heed");
    private final FlowPane fields = new FlowPane();
    private final Button doIt = new Button();
    private final Map<String, Supplier<String>> answers = new HashMap<>();
    private final List<ComboBox<Field.Choice>> choices = new ArrayList<>();

    private @Nullable Ask drawn;

    public AskForm(Consumer<Answers> submit, Runnable cancel) {
        this.submit = submit;
        this.cancel = cancel;
        getStyleClass().add("ask-form");
        fields.getStyleClass().add("ask-fields");
        doIt.getStyleClass().add("do-it");
        doIt.setId("do-it");
        doIt.setOnAction(pressed -> answer());
        Button leave = new Button("Leave it");
        leave.setAccessibleHelp("Esc");
        leave.setOnAction(pressed -> this.cancel.run());
        HBox buttons = new HBox(doIt, leave);
        buttons.getStyleClass().add("ask-buttons");
        getChildren().addAll(title, fields, trouble, buttons);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        show(null);
    }

    /** Shows a question with the keyboard in its first field, or nothing. */
    public void show(@Nullable Ask ask) {
        setVisible(ask != null);
        setManaged(ask != null);
        boolean same = ask != null
                && drawn != null
                && ask.fields().equals(drawn.fields())
                && ask.title().equals(drawn.title());
        drawn = ask;
        if (ask == null) {
            return;
        }
        String why = ask.trouble();
        trouble.setText(why == null ? "" : why);
        trouble.setVisible(why != null);
        trouble.setManaged(why != null);
        if (!same) {
            draw(ask);
        }
    }

    private void draw(Ask ask) {
        title.setText(ask.title());
        doIt.setText(ask.doIt() + "  Enter");
        answers.clear();
        choices.clear();
        List<Node> nodes = ask.fields().stream().map(this::draw).toList();
        fields.getChildren().setAll(nodes);
        Platform.runLater(() -> focusFirst(ask));
    }

    /** What was offered is typed over; what was begun is gone on with. */
    private void focusFirst(Ask ask) {
        if (ask.fields().isEmpty() || !(fields.lookup(".input") instanceof Node first)) {
            doIt.requestFocus();
            return;
        }
        first.requestFocus();
        if (first instanceof TextField text) {
            text.end();
            if (!text.getText().isEmpty() && !ask.fields().getFirst().begun()) {
                text.selectAll();
            }
        }
    }

    /** Puts the keyboard into the first field again. */
    public void takeKeyboard() {
        Ask ask = drawn;
        if (ask != null) {
            focusFirst(ask);
        }
    }

    private Node draw(Field field) {
        Node input = field.choices().isEmpty() ? written(field) : chosen(field);
        input.getStyleClass().add("input");
        input.setId("ask-" + field.name());
        input.setAccessibleText(field.label());
        Label label = new Label(field.label());
        label.setLabelFor(input);
        label.getStyleClass().add("heading");
        return new VBox(label, input);
    }

    private TextField written(Field field) {
        TextField text = new TextField(field.text());
        text.setPrefColumnCount(field.broad() ? WORDS : DIGITS);
        answers.put(field.name(), text::getText);
        return text;
    }

    private ComboBox<Field.Choice> chosen(Field field) {
        ComboBox<Field.Choice> box = new ComboBox<>();
        box.getItems().setAll(field.choices());
        box.setConverter(new Saying());
        field.choices().stream()
                .filter(choice -> choice.value().equals(field.text()))
                .findFirst()
                .ifPresent(box::setValue);
        choices.add(box);
        answers.put(
                field.name(), () -> box.getValue() == null ? "" : box.getValue().value());
        return box;
    }

    private static final class Saying extends StringConverter<Field.Choice> {
        @Override
        public String toString(Field.@Nullable Choice choice) {
            return choice == null ? "" : choice.words();
        }

        @Override
        public Field.@Nullable Choice fromString(String words) {
            return null;
        }
    }

    private void answer() {
        Map<String, String> given = new HashMap<>();
        answers.forEach((name, answer) -> given.put(name, Objects.requireNonNullElse(answer.get(), "")));
        submit.accept(new Answers(given));
    }

    private void pressed(KeyEvent key) {
        boolean open = choices.stream().anyMatch(ComboBox::isShowing);
        boolean writing = key.getTarget() instanceof TextField;
        switch (key.getCode()) {
            case ENTER -> {
                if (open || key.getTarget() instanceof Button) {
                    return;
                }
                answer();
            }
            case ESCAPE -> {
                if (open) {
                    return;
                }
                cancel.run();
            }
            case UP, DOWN -> {
                if (!writing || choices.isEmpty()) {
                    return;
                }
                step(key.getCode() == javafx.scene.input.KeyCode.DOWN ? 1 : -1);
            }
            default -> {
                return;
            }
        }
        key.consume();
    }

    private void step(int by) {
        ComboBox<Field.Choice> box = choices.getFirst();
        int to = box.getSelectionModel().getSelectedIndex() + by;
        box.getSelectionModel().select(Math.clamp(to, 0, box.getItems().size() - 1));
    }
}
