package hornbook.viewer.diagnose;

import hornbook.catalogue.diagnose.Advice;
import hornbook.catalogue.diagnose.DiagnoseAnswer;
import hornbook.catalogue.diagnose.DiagnoseAnswer.Cure;
import hornbook.viewer.diagnose.DiagnoseView.Said;
import hornbook.viewer.widget.Words;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Words of a symptom above; below them the next check, what it may be, what was checked, and the cure. */
public final class DiagnosePane extends VBox {
    private final DiagnoseModel model;
    private final Consumer<String> pull;
    private final TextField symptom = new TextField();
    private final Label said = Words.text("", "banner");
    private final VBox inside = new VBox();
    private final ScrollPane scroll = new ScrollPane(inside);

    private DiagnoseView drawn = DiagnoseView.NOTHING;

    /**
     * @param pull shows a drawer in its cabinet
     * @param leave puts the pane away
     */
    public DiagnosePane(DiagnoseModel model, Consumer<String> pull, Runnable leave) {
        this.model = model;
        this.pull = pull;
        getStyleClass().add("diagnose");
        getStylesheets()
                .add(Objects.requireNonNull(DiagnosePane.class.getResource("diagnose.css"))
                        .toExternalForm());
        symptom.setId("symptom");
        symptom.setPromptText("low notes burble");
        symptom.setAccessibleText("What the player hears or feels");
        symptom.setOnAction(enter -> model.ask(symptom.getText()));
        HBox.setHgrow(symptom, Priority.ALWAYS);
        Button ask = new Button("Ask");
        ask.setId("ask-symptom");
        ask.setMinWidth(USE_PREF_SIZE);
        ask.setOnAction(pressed -> model.ask(symptom.getText()));
        HBox words = new HBox(symptom, ask);
        words.getStyleClass().add("panel-head");
        inside.getStyleClass().add("inside");
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(head(leave), words, said, scroll);
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
        model.onChange(this::show);
    }

    private static Node head(Runnable leave) {
        Label title = Words.text("What is wrong", "card-title");
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        Button back = new Button("Back");
        back.setMinWidth(USE_PREF_SIZE);
        back.setAccessibleHelp("Esc");
        back.setOnAction(pressed -> leave.run());
        HBox head = new HBox(title, back);
        head.getStyleClass().add("panel-head");
        return head;
    }

    /** Puts the keyboard where it goes on: in the words while nothing was asked, on the answers, on what follows. */
    public void focus() {
        if (drawn.told() == null) {
            symptom.requestFocus();
            return;
        }
        Stream.of("#reply-yes", "#plan-cure", "#write-cause")
                .map(inside::lookup)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(this)
                .requestFocus();
    }

    /** Digits answer, as they do on the bench; Backspace takes the last answer back. */
    private void pressed(KeyEvent key) {
        if (key.getTarget() instanceof TextInputControl || key.isShortcutDown() || key.isAltDown()) {
            return;
        }
        switch (key.getCode()) {
            case DIGIT1, NUMPAD1 -> model.answer(true);
            case DIGIT2, NUMPAD2 -> model.answer(false);
            case DIGIT0, NUMPAD0 -> model.answer(null);
            case BACK_SPACE -> model.takeBackLast();
            default -> {
                return;
            }
        }
        key.consume();
    }

    private void show(DiagnoseView view) {
        DiagnoseView before = drawn;
        drawn = view;
        if (!view.symptom().equals(before.symptom()) || !view.complaint().equals(before.complaint())) {
            symptom.setText(view.symptom());
        }
        said.setText(view.said());
        said.setVisible(!view.said().isEmpty());
        said.setManaged(said.isVisible());
        Told told = view.told();
        if (told == null) {
            inside.getChildren().setAll(Words.text("Say it as the player does, and press Enter.", "quiet"));
        } else if (!told.equals(before.told())) {
            draw(view, told);
            scroll.setVvalue(0);
            Platform.runLater(this::focus);
        }
    }

    private void draw(DiagnoseView view, Told told) {
        DiagnoseAnswer answer = told.answer();
        inside.getChildren().clear();
        if (answer.causes().isEmpty()) {
            notUnderstood(answer);
            return;
        }
        add(Words.text("Read as: " + read(answer), "quiet"));
        if (answer.next() != null) {
            add(new NextPane(model, pull, told));
        } else {
            add(Words.text(Words.sentence(answer.why()), answer.advice() == Advice.ASK ? "stop" : "banner"));
        }
        Cure cure = answer.cure();
        boolean found = answer.advice() == Advice.CURE;
        if (cure != null && found) {
            add(new CurePane(model, view, told, cure));
        }
        checks(view.checks());
        CauseRows.of(answer).forEach(this::add);
        if (cure != null && !found) {
            add(new CurePane(model, view, told, cure));
        }
        answer.remarks().forEach(remark -> add(Words.text(Words.sentence(remark), "quiet")));
    }

    private static String read(DiagnoseAnswer answer) {
        boolean several = answer.faults().size() > 1;
        return answer.faults().stream()
                .map(f -> f.title() + (several ? " (" + Words.chance(f.probability()) + ")" : ""))
                .collect(Collectors.joining("; "));
    }

    private void notUnderstood(DiagnoseAnswer answer) {
        add(Words.text(Words.sentence(answer.why()) + " Stop and ask, or say it otherwise. Perhaps:", "banner"));
        answer.nearest().forEach(title -> {
            Button meant = new Button(title);
            meant.getStyleClass().add("meant");
            meant.setOnAction(pressed -> model.ask(title));
            add(meant);
        });
    }

    private void checks(List<Said> checks) {
        if (!checks.isEmpty()) {
            add(Words.text("Checked", "heading"));
        }
        for (Said made : checks) {
            Boolean yes = made.yes();
            String reply = yes == null ? "can\u2019t tell" : yes ? "yes" : "no";
            Label words = Words.text(made.question() + "  " + reply, "words");
            HBox.setHgrow(words, Priority.ALWAYS);
            words.setMaxWidth(Double.MAX_VALUE);
            Button back = new Button("Take back");
            back.setAccessibleText("Take back: " + made.question());
            back.setMinWidth(USE_PREF_SIZE);
            back.setOnAction(pressed -> model.takeBack(made.check()));
            HBox row = new HBox(words, back);
            row.getStyleClass().add("panel-head");
            add(row);
        }
    }

    private void add(Node node) {
        inside.getChildren().add(node);
    }
}
