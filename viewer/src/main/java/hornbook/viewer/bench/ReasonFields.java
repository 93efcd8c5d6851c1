package hornbook.viewer.bench;

import hornbook.shared.job.TakeIn;
import hornbook.viewer.widget.Words;
import java.util.List;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Why a horn is here that is not in the books yet: it is taken in with that. */
final class ReasonFields extends VBox {
    private static final List<String> KINDS = TakeIn.KINDS;

    private final TextField complaint = new TextField();
    private final ToggleGroup kinds = new ToggleGroup();

    ReasonFields() {
        getStyleClass().add("fields");
        complaint.setId("complaint");
        complaint.setPromptText("in the owner\u2019s words");
        complaint.setAccessibleText("What the horn is here for, in the owner's words");
        FlowPane kind = new FlowPane();
        kind.getStyleClass().add("choices");
        for (String word : KINDS) {
            ToggleButton button = new ToggleButton(word);
            button.setToggleGroup(kinds);
            button.setUserData(word);
            kind.getChildren().add(button);
        }
        kinds.selectToggle(kinds.getToggles().getFirst());
        getChildren()
                .setAll(
                        Words.text("It is not in the books yet: it is taken in as a job.", "banner"),
                        Words.text("What is it here for?", "heading"),
                        complaint,
                        kind);
    }

    BenchBook.Reason reason() {
        Object kind = kinds.getSelectedToggle() == null
                ? KINDS.getFirst()
                : kinds.getSelectedToggle().getUserData();
        String words = complaint.getText().strip();
        return new BenchBook.Reason((String) kind, words.isEmpty() ? "looked over at the bench" : words);
    }
}
