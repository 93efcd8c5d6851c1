package hornbook.viewer.exchange;

import hornbook.shared.exchange.SheetKind;
import hornbook.shared.exchange.SheetLook;
import hornbook.viewer.widget.Words;
import java.util.List;
import java.util.Objects;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import org.jspecify.annotations.Nullable;

/** The columns of a list, what stands in them, and what each is read as. */
final class ColumnRows extends GridPane {
    private static final String OUT = "left out";

    private final BiConsumer<String, String> told;

    private @Nullable SheetLook drawn;

    /** @param told column and field; an empty field leaves the column out */
    ColumnRows(BiConsumer<String, String> told) {
        this.told = told;
        getStyleClass().add("column-rows");
    }

    void show(SheetKind kind, SheetLook look) {
        if (look.equals(drawn)) {
            return;
        }
        drawn = look;
        getChildren().clear();
        addRow(0, heading("Column"), heading("What stands in it"), heading("Read as"));
        for (int i = 0; i < look.columns().size(); i++) {
            addRow(i + 1, row(i, kind, look));
        }
    }

    private javafx.scene.Node[] row(int place, SheetKind kind, SheetLook look) {
        String column = look.columns().get(place);
        String cells = look.first().stream()
                .map(row -> row.get(place))
                .filter(cell -> !cell.isBlank())
                .collect(Collectors.joining(" \u00b7 "));
        Label sample = Words.text(cells, "quiet");
        sample.setMaxWidth(Double.MAX_VALUE);
        return new javafx.scene.Node[] {Words.text(column, "lot-title"), sample, choice(column, place, kind, look)};
    }

    private ComboBox<String> choice(String column, int place, SheetKind kind, SheetLook look) {
        ComboBox<String> box = new ComboBox<>();
        List<String> words = Stream.concat(
                        Stream.of(OUT), kind.fields().stream().map(ColumnRows::words))
                .toList();
        box.getItems().setAll(words);
        String field = look.fields().get(column);
        box.setValue(field == null ? OUT : words(field));
        box.setId("column-" + place);
        box.setAccessibleText("Column " + column + " is read as");
        box.setOnAction(chosen -> told.accept(column, field(Objects.requireNonNullElse(box.getValue(), OUT))));
        return box;
    }

    private static String words(String field) {
        return field.replace('_', ' ');
    }

    private static String field(String words) {
        return words.equals(OUT) ? "" : words.replace(' ', '_');
    }

    private static Label heading(String words) {
        return Words.text(words, "heading");
    }
}
