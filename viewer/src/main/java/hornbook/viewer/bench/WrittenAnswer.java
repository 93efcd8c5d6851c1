package hornbook.viewer.bench;

import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitKind;
import hornbook.viewer.widget.Words;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** An answer that is written: a size in any form, or words as they stand on the horn. */
final class WrittenAnswer extends VBox {
    private final TextField field = new TextField();
    private final Label how = Words.text("", "quiet");

    WrittenAnswer(Consumer<String> take) {
        getStyleClass().add("written-answer");
        field.setId("written");
        field.setOnAction(enter -> take.accept(field.getText()));
        HBox.setHgrow(field, Priority.ALWAYS);
        Button done = new Button("Take it");
        done.setMinWidth(Region.USE_PREF_SIZE);
        done.setOnAction(pressed -> take.accept(field.getText()));
        HBox row = new HBox(field, done);
        row.getStyleClass().add("field-row");
        getChildren().addAll(row, how);
    }

    void show(Trait trait) {
        boolean number = trait.kind() == TraitKind.NUMBER;
        field.clear();
        field.setPromptText(number ? "2.84 mm" : "as read");
        field.setAccessibleText(trait.question());
        how.setText(
                number
                        ? "2.84, 2,84 mm, .112 in, 7/64\" or #40; a bare number is millimetres." + usual(trait)
                        : "Letter for letter; ? for each that cannot be read.");
    }

    private static String usual(Trait trait) {
        return trait.usual() == null ? "" : " Usual: " + trait.usual() + ".";
    }

    void focusFirst() {
        field.requestFocus();
    }
}
