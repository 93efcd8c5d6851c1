package hornbook.viewer.setting;

import hornbook.shared.setting.SettingLine;
import hornbook.viewer.widget.Words;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A row a setting: its name, what it is set to, what it means. Enter, or leaving the field, sets it. */
public final class SettingPane extends VBox {
    private final SettingModel model;
    private final VBox rows = new VBox();
    private final Map<String, Row> byName = new HashMap<>();

    private List<SettingLine> drawn = List.of();

    public SettingPane(SettingModel model) {
        this.model = model;
        getStyleClass().add("settings");
        rows.getStyleClass().add("setting-rows");
        getChildren()
                .addAll(
                        Words.text("How this shop is set", "card-title"),
                        Words.text("An empty field means what is usual. Ctrl+Z takes a change back.", "quiet"),
                        rows);
        model.onChange(this::draw);
    }

    /** Asks again how it stands. */
    public void refresh() {
        model.refresh();
    }

    private void draw(SettingView view) {
        if (byName.isEmpty() && !view.lines().isEmpty()) {
            view.lines().forEach(line -> byName.put(line.name(), new Row(line)));
            rows.getChildren()
                    .setAll(view.lines().stream()
                            .map(line -> byName.get(line.name()))
                            .toList());
        }
        boolean fresh = !view.lines().equals(drawn);
        drawn = view.lines();
        for (SettingLine line : view.lines()) {
            Objects.requireNonNull(byName.get(line.name()))
                    .show(line, fresh, view.touched().equals(line.name()) ? view.trouble() : "");
        }
    }

    private final class Row extends VBox {
        private final TextField field = new TextField();
        private final Label trouble = Words.text("", "heed");

        Row(SettingLine line) {
            String name = Words.sentence(line.name().replace('_', ' ')).replaceFirst("[.]$", "");
            Label label = new Label(name);
            label.setLabelFor(field);
            label.getStyleClass().add("setting-name");
            field.setId("setting-" + line.name());
            field.setPromptText("usual: " + line.usual());
            field.setAccessibleText(name);
            field.setAccessibleHelp(line.meaning() + " Write " + line.form() + ".");
            field.setOnAction(enter -> model.write(line.name(), field.getText()));
            field.focusedProperty().subscribe((before, now) -> {
                if (before && !now) {
                    model.write(line.name(), field.getText());
                }
            });
            Label meaning = Words.text(line.meaning() + " Write " + line.form() + ".", "quiet");
            HBox.setHgrow(meaning, Priority.ALWAYS);
            HBox row = new HBox(label, field, meaning);
            row.getStyleClass().add("line");
            getChildren().addAll(row, trouble);
        }

        /** What was written stays in the field while it is refused. */
        void show(SettingLine line, boolean fresh, String refused) {
            if (fresh && refused.isEmpty()) {
                field.setText(Objects.requireNonNullElse(line.value(), ""));
            }
            String why = !refused.isEmpty() ? refused : Objects.requireNonNullElse(line.trouble(), "");
            trouble.setText(why);
            trouble.setVisible(!why.isEmpty());
            trouble.setManaged(!why.isEmpty());
        }
    }
}
