package hornbook.viewer.bench;

import hornbook.catalogue.picture.Picture;
import hornbook.viewer.widget.PictureView;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** One thing that may be seen: its drawing, its words, the key that says it. */
final class ValueCard extends Tile {
    private static final PseudoClass THERE = PseudoClass.getPseudoClass("there");
    private static final PseudoClass NOT_THERE = PseudoClass.getPseudoClass("not-there");

    private final String words;
    private final String key;
    private final Optional<Picture> picture;
    private final Label mark = new Label();

    /**
     * @param name in a word or two
     * @param words what is to be seen
     * @param key that presses it; empty for none
     */
    ValueCard(String name, String words, String key, Optional<Picture> picture, Runnable press) {
        super(press);
        this.words = name + ": " + words;
        this.key = key;
        this.picture = picture;
        getStyleClass().add("value-card");
        mark.getStyleClass().add("value-mark");
        VBox face = new VBox();
        face.getStyleClass().add("value-face");
        picture.ifPresent(p -> face.getChildren().add(new PictureView(p)));
        face.getChildren().addAll(Words.text(name, "value-name"), Words.text(words, "value-words"));
        face.setAlignment(picture.isPresent() ? Pos.TOP_CENTER : Pos.CENTER);
        Label digit = new Label(key);
        digit.getStyleClass().add("value-key");
        digit.setVisible(!key.isEmpty());
        StackPane.setAlignment(digit, Pos.TOP_LEFT);
        StackPane.setAlignment(mark, Pos.TOP_RIGHT);
        StackPane stack = new StackPane(face, digit, mark);
        HBox.setHgrow(stack, Priority.ALWAYS);
        getChildren().add(stack);
        setAlignment(Pos.TOP_CENTER);
        show(null, false);
    }

    /** Size of the type it is set in, px. */
    double typeSize() {
        return mark.getFont().getSize();
    }

    /**
     * Shows how it is marked.
     *
     * @param there null where it is not
     * @param several whether cards are marked, and not simply pressed
     */
    void show(@Nullable Boolean there, boolean several) {
        pseudoClassStateChanged(THERE, Boolean.TRUE.equals(there));
        pseudoClassStateChanged(NOT_THERE, Boolean.FALSE.equals(there));
        setAccessibleRole(several ? AccessibleRole.CHECK_BOX : AccessibleRole.BUTTON);
        mark.setText(there == null ? "" : there ? "\u2713" : "not");
        mark.setVisible(there != null);
        String state = there == null ? "" : there ? ", marked" : ", marked as not there";
        setAccessibleText(words + state + picture.map(p -> ". " + p.alt()).orElse(""));
        setAccessibleHelp(key.isEmpty() ? null : "Key " + key);
    }
}
