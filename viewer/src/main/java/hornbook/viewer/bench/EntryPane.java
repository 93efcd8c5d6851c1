package hornbook.viewer.bench;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Make;
import hornbook.catalogue.entry.Years;
import hornbook.catalogue.identify.NewModel;
import hornbook.viewer.widget.Words;
import java.util.Comparator;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** A new model from this horn: what the looks say is filled in, the names are asked for. */
final class EntryPane extends VBox {
    private final ComboBox<Make> makes = new ComboBox<>();
    private final TextField newMake = field("new-make", "A make that is not in the list");
    private final TextField pattern = field("pattern", "The maker's name for it, or yours");
    private final TextField from = field("years-from", "Made from that year on");
    private final TextField to = field("years-to", "Made up to that year");
    private final Label trouble = Words.text("", "banner");
    private final ReasonFields reason = new ReasonFields();

    EntryPane(BenchModel model, BenchView view, Catalogue catalogue) {
        getStyleClass().addAll("look-pane", "form");
        reason.setVisible(view.horn().horn() == null);
        reason.setManaged(reason.isVisible());
        makes(catalogue);
        fill(view, catalogue);
        Button save = new Button("Save as a model");
        save.setId("save-entry");
        save.getStyleClass().add("main-act");
        save.setOnAction(pressed -> save(model));
        trouble.setManaged(false);
        trouble.setVisible(false);
        getChildren()
                .addAll(
                        ConfirmPane.head("A new model from this horn", model),
                        reason,
                        row("Make", makes),
                        row("or a new make", newMake),
                        row("Pattern", pattern),
                        row("Years", from, new Label("to"), to),
                        trouble,
                        Words.text(
                                "The " + view.horn().traits().size()
                                        + " looks go into it, and so do pads, key heights, map and taking down as written"
                                        + " on its jobs. Its source is this shop, one horn.",
                                "quiet"),
                        save);
    }

    private void makes(Catalogue catalogue) {
        makes.setId("make");
        makes.setAccessibleText("Make");
        makes.getItems()
                .setAll(catalogue.makes().values().stream()
                        .sorted(Comparator.comparing(Make::title))
                        .toList());
        makes.setConverter(new StringConverter<>() {
            @Override
            public String toString(@Nullable Make make) {
                return make == null ? "" : make.title();
            }

            @Override
            public Make fromString(String title) {
                return makes.getItems().stream()
                        .filter(m -> m.title().equals(title))
                        .findFirst()
                        .orElseThrow();
            }
        });
    }

    /** The name on the horn is its make where there is one of that name; years as reckoned. */
    private void fill(BenchView view, Catalogue catalogue) {
        String mark = view.horn().mark();
        Optional<Make> named = catalogue.makes().values().stream()
                .filter(m -> m.title().equalsIgnoreCase(mark))
                .findFirst();
        named.ifPresentOrElse(makes::setValue, () -> newMake.setText(mark));
        Weighed weighed = view.weighed();
        if (weighed != null && weighed.answer().years() != null) {
            from.setText(Integer.toString(weighed.answer().years().from()));
            to.setText(Integer.toString(weighed.answer().years().to()));
        }
    }

    private void save(BenchModel model) {
        try {
            String other = newMake.getText().strip();
            if (other.isEmpty() && makes.getValue() == null) {
                refuse("Choose a make, or write a new one.");
            } else if (pattern.getText().isBlank()) {
                refuse("Give the pattern a name; your own will do.");
            } else {
                refuse("");
                model.deeds()
                        .entry(
                                new NewModel(
                                        other.isEmpty() ? makes.getValue().id() : other,
                                        !other.isEmpty(),
                                        pattern.getText().strip(),
                                        new Years(year(from), year(to))),
                                reason.reason());
            }
        } catch (NumberFormatException noYear) {
            refuse("A year is four digits, as in 1923; leave it empty where it is not known.");
        }
    }

    private void refuse(String why) {
        trouble.setText(why);
        trouble.setVisible(!why.isEmpty());
        trouble.setManaged(!why.isEmpty());
    }

    private static @Nullable Integer year(TextField field) {
        return field.getText().isBlank()
                ? null
                : Integer.valueOf(field.getText().strip());
    }

    private static TextField field(String id, String says) {
        TextField field = new TextField();
        field.setId(id);
        field.setAccessibleText(says);
        return field;
    }

    private static Node row(String words, Node... fields) {
        Label label = new Label(words);
        label.getStyleClass().add("field-name");
        HBox row = new HBox(label);
        row.getChildren().addAll(fields);
        row.getStyleClass().add("field-row");
        return row;
    }
}
