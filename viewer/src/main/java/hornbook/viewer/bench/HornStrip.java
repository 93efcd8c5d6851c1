package hornbook.viewer.bench;

import hornbook.viewer.widget.Words;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Which horn is on the bench, its number and the name on it, and the way to the next horn. */
final class HornStrip extends FlowPane {
    private final Label title = Words.text("", "horn-title");
    private final Label where = Words.text("", "quiet");
    private final TextField serial;
    private final TextField mark;
    private final ToggleButton learned = new ToggleButton("Our horns count");

    private String shownSerial = "";
    private String shownMark = "";

    HornStrip(BenchModel model) {
        getStyleClass().add("horn-strip");
        serial = field("serial", "Serial number, ? for a worn digit", "3660?8", model::serial);
        mark = field("mark", "Name on it, as read", "on the bell", model::mark);
        Button here = new Button("Horns here");
        here.setId("horns-here");
        here.setMinWidth(Region.USE_PREF_SIZE);
        here.setOnAction(pressed -> model.lookRound());
        Button anew = new Button("Start anew");
        anew.setId("anew");
        anew.setMinWidth(Region.USE_PREF_SIZE);
        anew.setOnAction(pressed -> model.anew());
        learned.setId("learned");
        learned.setMinWidth(Region.USE_PREF_SIZE);
        learned.setAccessibleHelp("What the shop's own horns taught counts beside what entries state");
        learned.setOnAction(pressed -> model.plain(!model.view().horn().plain()));
        VBox named = new VBox(title, where);
        named.getStyleClass().add("horn-named");
        getChildren().addAll(named, labelled("Serial", serial), labelled("Name on it", mark), learned, here, anew);
    }

    private static TextField field(String id, String says, String prompt, Consumer<String> take) {
        TextField field = new TextField();
        field.setId(id);
        field.setPromptText(prompt);
        field.setAccessibleText(says);
        field.setOnAction(enter -> take.accept(field.getText()));
        field.focusedProperty().subscribe((before, now) -> {
            if (before && !now) {
                take.accept(field.getText());
            }
        });
        return field;
    }

    private static HBox labelled(String words, TextField field) {
        Label label = new Label(words);
        label.setLabelFor(field);
        label.setMinWidth(Region.USE_PREF_SIZE);
        HBox row = new HBox(label, field);
        row.getStyleClass().add("field-row");
        return row;
    }

    void show(BenchView view) {
        InHand horn = view.horn();
        title.setText(horn.title().isEmpty() ? "A horn not seen before" : horn.title());
        String place = (horn.horn() == null ? "" : horn.horn()) + (horn.job() == null ? "" : "  \u00b7  " + horn.job());
        where.setText(place);
        where.setManaged(!place.isEmpty());
        if (!horn.serial().equals(shownSerial)) {
            shownSerial = horn.serial();
            serial.setText(shownSerial);
        }
        if (!horn.mark().equals(shownMark)) {
            shownMark = horn.mark();
            mark.setText(shownMark);
        }
        learned.setSelected(!horn.plain());
    }
}
