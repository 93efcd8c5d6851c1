package hornbook.viewer.bench;

import hornbook.catalogue.entry.Look;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.identify.NextLook;
import hornbook.catalogue.picture.Pictures;
import hornbook.viewer.widget.PictureView;
import hornbook.viewer.widget.Words;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What to look at: the question, where on the horn, how, and why it is asked. */
final class LookHead extends VBox {
    private static final int GUARDS_NAMED = 2;
    private static final String NOT_YET =
            "Not yet: other looks come first. Answer only where it is off and open already.";

    private final Pictures pictures;

    LookHead(Pictures pictures) {
        this.pictures = pictures;
        getStyleClass().add("look-head");
    }

    void show(Trait trait, BenchView view, Phrases phrases) {
        Optional<NextLook> look = view.look(trait.id());
        VBox words = new VBox(Words.text(trait.look(), "how-to-look"));
        words.getChildren().add(Words.text(effort(trait.cost()), "quiet"));
        look.filter(l -> !l.guards().isEmpty())
                .ifPresent(l -> words.getChildren().add(Words.text(guards(l, phrases), "guards")));
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox how = new HBox();
        how.getStyleClass().add("how");
        pictures.look(trait.id()).map(PictureView::new).ifPresent(how.getChildren()::add);
        how.getChildren().add(words);
        getChildren().setAll(Words.text(trait.question(), "question"), how);
        if (view.waits(trait)) {
            getChildren().add(1, Words.text(NOT_YET, "not-yet"));
        }
    }

    private static String guards(NextLook look, Phrases phrases) {
        String named =
                look.guards().stream().limit(GUARDS_NAMED).map(phrases::title).collect(Collectors.joining(", "));
        int more = look.guards().size() - GUARDS_NAMED;
        return "Guards against: " + named + (more > 0 ? " and " + more + " more" : "");
    }

    static String effort(Look cost) {
        return switch (cost) {
            case GLANCE -> "A glance.";
            case HAND -> "Take it in the hand.";
            case GAUGE -> "Needs a loupe, lamp or gauge.";
            case KEY_OFF -> "A key must come off.";
            case PAD_OFF -> "A pad must come out.";
        };
    }
}
