package hornbook.viewer.hornmap;

import hornbook.catalogue.entry.Span;
import hornbook.catalogue.hornmap.CupLine;
import hornbook.viewer.widget.Words;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The chosen cup: the field to write in, and all that is known of it. */
final class CupPanel extends VBox {
    private final HornMapModel model;
    private final LayerBar layers;
    private final Label asks = Words.text("", "ask-title");
    private final TextField field = new TextField();
    private final Label trouble = Words.text("", "heed");
    private final Label said = Words.text("", "quiet");
    private final Label usual = Words.text("", "found");
    private final VBox known = new VBox();

    private String at = "";

    CupPanel(HornMapModel model) {
        this.model = model;
        getStyleClass().add("cup-panel");
        layers = new LayerBar(model::on, model::on);
        field.setId("cup-field");
        field.getStyleClass().add("cup-field");
        field.setAccessibleHelp("Enter writes it down and goes on to the next cup; Up and Down choose a cup.");
        field.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        asks.setLabelFor(field);
        known.getStyleClass().add("inside");
        ScrollPane scroll = new ScrollPane(known);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(layers, asks, field, trouble, said, usual, scroll);
    }

    private void pressed(KeyEvent key) {
        switch (key.getCode()) {
            case ENTER -> model.enter(field.getText());
            case UP -> model.step(-1);
            case DOWN -> model.step(1);
            default -> {
                return;
            }
        }
        key.consume();
    }

    /** Takes the keyboard. */
    void focus() {
        field.requestFocus();
    }

    void show(HornMapView view) {
        layers.show(view);
        asks.setText(view.asks());
        field.setAccessibleText(view.asks());
        field.setDisable(!view.open());
        String now = view.chosen() + view.layer() + view.field();
        // What was refused stays to be put right; what was taken makes room for the next.
        if (!now.equals(at)) {
            field.clear();
            at = now;
        }
        tell(trouble, view.trouble());
        tell(said, view.open() ? hint(view) : "No job is open for this horn: take it in to write readings down.");
        known.getChildren().clear();
        view.cup().ifPresent(line -> show(line, view.layer()));
    }

    /** What Enter would do with nothing typed, else what came of the last entry. */
    private static String hint(HornMapView view) {
        Double pad = view.layer() == Layer.PADS ? view.tray().size(view.chosen()) : null;
        boolean fitted = view.cup().map(CupLine::pad).filter(CupLine.Size::own).isPresent();
        String none = view.layer() == Layer.PADS && !fitted ? view.tray().none().get(view.chosen()) : null;
        if (none != null) {
            return Words.sentence(none);
        }
        return pad == null || fitted ? view.said() : "Enter takes " + Marks.plain(pad) + " mm out of the tray.";
    }

    private static void tell(Label label, @Nullable String words) {
        boolean any = words != null && !words.isEmpty();
        label.setText(any ? words : "");
        label.setVisible(any);
        label.setManaged(any);
    }

    private void show(CupLine line, Layer layer) {
        boolean heights = layer == Layer.FOUND || layer == Layer.LEFT;
        String model = heights && line.modelHeight() != null ? "its model " + Marks.plain(line.modelHeight()) : "";
        Span span = heights ? line.usualHeight() : layer == Layer.KEYS || layer == Layer.LEAKS ? null : line.usualPad();
        String range = span == null ? "" : Marks.plain(span.low()) + " to " + Marks.plain(span.high()) + " mm";
        String words = Stream.of(range, model).filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
        tell(usual, words.isEmpty() ? "" : "Usual: " + words);
        line.remarks().forEach(remark -> add(Words.sentence(remark), "banner"));
        sizes(line);
        line.key()
                .forEach(key ->
                        add(key.title().replaceFirst(" \\(.*", "") + " " + key.value() + from(key.from()), "words"));
        line.findings().forEach(note -> add(note(note), "quiet"));
    }

    private void sizes(CupLine line) {
        size("Pad", line.pad());
        size("Inside", line.inside());
        size("Opening as found", line.found());
        size("Opening as left", line.left());
    }

    private void size(String what, CupLine.@Nullable Size size) {
        if (size != null) {
            add(what + " " + Marks.plain(size.mm()) + " mm" + from(size.from()), "words");
        }
    }

    private static String from(String from) {
        return from.equals("model") ? "  \u00b7  its model" : "  \u00b7  " + from;
    }

    private static String note(CupLine.Note note) {
        return Stream.of(note.day() + "  " + note.title(), note.value() + " " + note.unit(), note.note(), note.job())
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("  \u00b7  "));
    }

    private void add(String words, String style) {
        known.getChildren().add(Words.text(words, style));
    }
}
