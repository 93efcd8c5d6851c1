package hornbook.viewer.hornmap;

import hornbook.catalogue.hornmap.CupLine;
import hornbook.catalogue.hornmap.HornMap;
import hornbook.catalogue.picture.Pictures;
import hornbook.shared.job.KeyField;
import hornbook.viewer.widget.Words;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A horn cup by cup, to be read: sizes and findings on the drawing, more of the cup that is pressed. */
public final class CupsPane extends VBox {
    private static final List<Layer> LAYERS =
            Arrays.stream(Layer.values()).filter(layer -> layer != Layer.KEYS).toList();

    /** A cup's tile and the gap below it. */
    private static final double TILE = 37;

    private final HornMap map;
    private final HornDrawing drawing;
    private final FlowPane bar = new FlowPane();
    private final Label said = Words.text("Press a cup to read more of it.", "quiet");

    private Layer layer = Layer.PADS;
    private String chosen = "";

    public CupsPane(HornMap map, Pictures pictures) {
        this.map = map;
        getStyleClass().addAll("horn-map", "cups-pane");
        getStylesheets().add(String.valueOf(CupsPane.class.getResource("hornmap.css")));
        drawing = new HornDrawing(pictures.horn(map.instrument()), this::choose);
        drawing.setMinHeight((map.cups().size() + 1) / 2 * TILE);
        ScrollPane room = new ScrollPane(drawing);
        room.setFitToWidth(true);
        room.setFitToHeight(true);
        room.setMinHeight(0);
        room.setFocusTraversable(false);
        VBox.setVgrow(room, Priority.ALWAYS);
        said.setId("cup-said");
        String whose = map.horn().isEmpty() ? "as its model has them" : map.horn() + " as read, else as its model";
        getChildren().addAll(Words.text(map.title() + ": " + whose, "lot-title"), layers(), room, said);
        show();
    }

    private FlowPane layers() {
        ToggleGroup group = new ToggleGroup();
        bar.getStyleClass().add("layer-bar");
        LAYERS.forEach(each -> {
            ToggleButton button = new ToggleButton(each.title());
            button.setId("cups-" + each.name().toLowerCase(java.util.Locale.ROOT));
            button.setToggleGroup(group);
            button.setMinWidth(Region.USE_PREF_SIZE);
            button.setSelected(each == layer);
            button.setOnAction(pressed -> {
                button.setSelected(true);
                layer = each;
                show();
            });
            bar.getChildren().add(button);
        });
        return bar;
    }

    /** The keyboard to what is shown of the cups. */
    public void focus() {
        bar.getChildren().getFirst().requestFocus();
    }

    private void choose(String cup) {
        chosen = cup;
        show();
    }

    private void show() {
        Marks marks = new Marks(layer, KeyField.ROD_DIAMETER, Tray.NOTHING);
        drawing.show(map.cups().stream().map(marks::mark).toList(), chosen);
        map.cups().stream()
                .filter(line -> line.cup().equals(chosen))
                .findFirst()
                .ifPresent(line -> said.setText(words(line)));
    }

    private static String words(CupLine line) {
        Stream<String> usual = Stream.of(
                line.usualPad() == null ? "" : "pads usually " + span(line.usualPad()) + " mm",
                line.usualHeight() == null ? "" : "opens usually " + span(line.usualHeight()) + " mm");
        Stream<String> found = line.findings().stream()
                .map(note -> note.title() + " " + note.value() + " " + note.unit() + " (" + note.job() + ")");
        return line.title() + ": "
                + Stream.of(usual, found, line.remarks().stream())
                        .flatMap(part -> part)
                        .filter(part -> !part.isBlank())
                        .collect(Collectors.joining("; "));
    }

    private static String span(hornbook.catalogue.entry.Span span) {
        return Marks.plain(span.low()) + " to " + Marks.plain(span.high());
    }
}
