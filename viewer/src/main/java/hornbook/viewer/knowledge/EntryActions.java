package hornbook.viewer.knowledge;

import hornbook.viewer.widget.Words;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What can be done with the open entry, and whether it is shipped or the shop's own. */
final class EntryActions extends VBox {
    private final Label whose = Words.text("", "whose");
    private final Label told = Words.text("", "field-about");
    private final Button edit = new Button();
    private final Button gone = new Button();
    private final Label asked = Words.text("", "banner");
    private final Button yes = new Button();
    private final Button keep = new Button("Keep it");
    private final FlowPane answer = new FlowPane(yes, keep);

    EntryActions(KnowledgeModel model) {
        getStyleClass().add("entry-actions");
        edit.setId("edit-entry");
        gone.setId("take-away");
        yes.setId("take-away-yes");
        edit.setOnAction(pressed -> model.edit());
        gone.setOnAction(pressed -> model.askToTakeAway());
        yes.setOnAction(pressed -> model.takeAway());
        keep.setOnAction(pressed -> model.keep());
        FlowPane acts = new FlowPane(edit, gone);
        acts.getStyleClass().add("toggles");
        answer.getStyleClass().add("toggles");
        getChildren().addAll(whose, told, acts, asked, answer);
    }

    void show(KnowledgeView view) {
        Opened open = view.open();
        if (open == null) {
            return;
        }
        boolean over = open.own() && open.shipped();
        whose.setText(over ? "The shop's own copy, over a shipped one" : open.own() ? "The shop's own" : "Shipped");
        told.setText("Source: " + open.told().source() + ".  How sure: "
                + open.told().sureness() + ".");
        edit.setText(open.own() ? "Change it" : "Change it in an own copy");
        gone.setText(over ? "Back to the shipped one" : "Take it away");
        yes.setText(gone.getText());
        shown(gone, open.own());
        String question = view.asking() == null ? "" : view.asking();
        asked.setText(question);
        shown(asked, !question.isEmpty());
        shown(answer, !question.isEmpty());
    }

    private static void shown(javafx.scene.Node node, boolean wanted) {
        node.setVisible(wanted);
        node.setManaged(wanted);
    }
}
