package hornbook.viewer.welcome;

import hornbook.viewer.widget.Words;
import java.util.Objects;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Three broad choices, and what comes of them. */
public final class WelcomePane extends StackPane {
    private final Label said = Words.text("", "banner");
    private final Label doing = Words.text("", "quiet");
    private final ProgressBar bar = new ProgressBar();
    private final HBox choices;

    public WelcomePane(WelcomeModel model) {
        getStyleClass().add("welcome");
        getStylesheets()
                .add(Objects.requireNonNull(WelcomePane.class.getResource("welcome.css"))
                        .toExternalForm());
        choices = new HBox(
                choice(
                        "demo",
                        "Look round the demonstration shop",
                        "Invented from end to end, and full: try"
                                + " everything on it. Nothing you do there touches a shop of your own.",
                        model::openDemo),
                choice(
                        "empty",
                        "Start an empty shop",
                        "For your own drawers, horns and jobs, in\n"
                                + model.view().shop(),
                        model::makeEmpty),
                choice(
                        "import",
                        "Bring in what you have",
                        "Lists of drawers, parts, horns or jobs from a spreadsheet program, or all that another Hornbook wrote.",
                        model::bringIn));
        choices.getStyleClass().add("choices");
        bar.setMaxWidth(Double.MAX_VALUE);
        VBox middle = new VBox(
                Words.text("Hornbook", "plate"),
                Words.text("There is no shop here yet.", "ask"),
                choices,
                said,
                doing,
                bar);
        middle.getStyleClass().add("middle");
        getChildren().add(middle);
        model.onChange(this::draw);
    }

    private static Button choice(String id, String title, String words, Runnable act) {
        VBox face = new VBox(Words.text(title, "card-title"), Words.text(words, "quiet"));
        face.getStyleClass().add("face");
        Button button = new Button("", face);
        button.getStyleClass().add("choice");
        button.setId("choose-" + id);
        button.setAccessibleText(title + ". " + words);
        button.setOnAction(pressed -> act.run());
        return button;
    }

    private void draw(WelcomeView view) {
        boolean busy = view.doing() != null;
        choices.setDisable(busy);
        put(said, view.trouble());
        put(doing, view.doing());
        bar.setVisible(busy);
    }

    private static void put(Label label, @org.jspecify.annotations.Nullable String words) {
        label.setText(words == null ? "" : words);
        label.setVisible(words != null);
        label.setManaged(words != null);
    }
}
