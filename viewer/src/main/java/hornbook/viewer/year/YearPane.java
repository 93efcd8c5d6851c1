package hornbook.viewer.year;

import hornbook.shared.year.YearAnswer;
import hornbook.viewer.widget.Words;
import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** One year with its plots; Left and Right go to the year before and after. */
public final class YearPane extends VBox {
    private final YearModel model;
    private final Label title = Words.text("", "card-title");
    private final Button before;
    private final Button after;
    private final Label said = Words.text("", "banner");
    private final Label doing = Words.text("", "words");
    private final HBox busy;
    private final VBox inside = new VBox();
    private final ScrollPane scroll = new ScrollPane(inside);

    private @Nullable YearAnswer drawn;

    /** @param leave puts the pane away */
    public YearPane(YearModel model, Runnable leave) {
        this.model = model;
        getStyleClass().add("year");
        getStylesheets()
                .add(Objects.requireNonNull(YearPane.class.getResource("year.css"))
                        .toExternalForm());
        before = button("year-before", "", () -> model.step(-1));
        after = button("year-after", "", () -> model.step(1));
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        HBox head = new HBox(
                title,
                before,
                after,
                button("year-csv", "CSV\u2026", model::csv),
                button("year-pdf", "PDF\u2026", model::pdf),
                button("year-back", "Back", leave));
        head.getStyleClass().add("panel-head");
        busy = new HBox(doing, button("year-stop", "Stop", model::stop));
        busy.getStyleClass().add("panel-head");
        inside.getStyleClass().add("inside");
        scroll.setFitToWidth(true);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(head, said, busy, scroll);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        model.onChange(this::show);
    }

    private static Button button(String id, String words, Runnable press) {
        Button button = new Button(words);
        button.setId(id);
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(pressed -> press.run());
        return button;
    }

    /** Puts the keyboard on the page: Up and Down scroll it. */
    public void takeKeyboard() {
        scroll.requestFocus();
    }

    private void pressed(KeyEvent key) {
        switch (key.getCode()) {
            case LEFT -> model.step(-1);
            case RIGHT -> model.step(1);
            default -> {
                return;
            }
        }
        key.consume();
    }

    private void show(YearView view) {
        said.setText(view.said());
        present(said, !view.said().isEmpty());
        doing.setText(view.doing());
        present(busy, !view.doing().isEmpty());
        YearAnswer year = view.books();
        present(before, year != null);
        present(after, year != null);
        if (year == null || year.equals(drawn)) {
            return;
        }
        drawn = year;
        title.setText("The year " + year.year());
        before.setText("\u2039 " + (year.year() - 1));
        before.setAccessibleText("The year before, " + (year.year() - 1));
        after.setText(year.year() + 1 + " \u203a");
        after.setAccessibleText("The year after, " + (year.year() + 1));
        after.setDisable(view.running());
        scroll.setVvalue(0);
        if (year.empty()) {
            inside.getChildren().setAll(Words.text(nothing(view, year), "said"));
        } else {
            inside.getChildren().setAll(new YearPage(model::title).of(year));
        }
    }

    private static String nothing(YearView view, YearAnswer year) {
        return "The books say nothing of " + year.year() + "."
                + (view.running() ? " It fills as jobs are taken in, clocked and handed back." : "");
    }

    private static void present(Node node, boolean there) {
        node.setVisible(there);
        node.setManaged(there);
    }
}
