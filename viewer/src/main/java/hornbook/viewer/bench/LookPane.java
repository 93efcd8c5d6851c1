package hornbook.viewer.bench;

import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitKind;
import hornbook.catalogue.picture.Pictures;
import hornbook.viewer.widget.Words;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The look that is asked for: question, cards, and the answers that are always there. */
final class LookPane extends VBox {
    private final LookTabs tabs;
    private final LookHead head;
    private final ValueCards cards;
    private final WrittenAnswer written;
    private final LookFoot foot;
    private final ScrollPane scroll = new ScrollPane();
    private final Node nothing = Words.text("Nothing is left to look at that would tell more.", "said");

    private @Nullable Trait drawn;
    private @Nullable BenchView shown;

    LookPane(BenchModel model, Pictures pictures) {
        getStyleClass().add("look-pane");
        tabs = new LookTabs(model);
        head = new LookHead(pictures);
        cards = new ValueCards(pictures, model::press);
        written = new WrittenAnswer(model::write);
        foot = new LookFoot(model, pictures);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        // Where there is little room the answers scroll; nothing else gives way.
        scroll.setMinHeight(0);
        List.of(tabs, head, foot).forEach(part -> part.setMinHeight(USE_PREF_SIZE));
    }

    void show(BenchView view, Phrases phrases) {
        if (shown != null
                && sameWeighed(shown, view)
                && shown.asking().equals(view.asking())
                && shown.horn().equals(view.horn())) {
            return;
        }
        shown = view;
        Trait trait = view.asking().trait();
        tabs.show(view, trait == null ? "" : trait.id(), phrases);
        if (trait == null) {
            getChildren().setAll(tabs, nothing);
        } else {
            getChildren().setAll(tabs, head, scroll, foot);
            head.show(trait, view, phrases);
            answers(trait);
            cards.mark(view.marks(), view.asking().several());
            foot.show(trait, view.asking());
        }
        drawn = trait;
    }

    /** Each weighing makes a record of its own: to compare all that is in them would take longer than to draw. */
    @SuppressWarnings("ReferenceEquality")
    private static boolean sameWeighed(BenchView one, BenchView other) {
        return one.weighed() == other.weighed();
    }

    private void answers(Trait trait) {
        if (trait.equals(drawn)) {
            return;
        }
        boolean focused = cards.hasFocus();
        boolean shown = trait.kind() == TraitKind.ONE || trait.kind() == TraitKind.MANY;
        if (shown) {
            cards.show(trait);
        } else {
            written.show(trait);
        }
        scroll.setContent(shown ? cards : written);
        scroll.setVvalue(0);
        if (focused || drawn == null) {
            focusFirst();
        }
    }

    /** Gives the keyboard to the answers, unless somebody is writing elsewhere. */
    void focusFirst() {
        boolean writing = getScene() != null
                && getScene().getFocusOwner() instanceof TextInputControl field
                && field.getScene() == getScene()
                && !field.getText().isEmpty();
        if (writing || getScene() == null) {
            return;
        }
        // Only then are the answers in the scene, and can be given it.
        scroll.applyCss();
        if (scroll.getContent() == cards) {
            cards.focusFirst();
        } else {
            written.focusFirst();
        }
    }

    void press(int number) {
        if (scroll.getContent() == cards) {
            cards.press(number);
        }
    }
}
