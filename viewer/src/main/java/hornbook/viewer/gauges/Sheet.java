package hornbook.viewer.gauges;

import hornbook.viewer.widget.Words;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;

/** What is asked at the left, what is answered at the right. */
final class Sheet extends BorderPane {
    private final VBox answers = new VBox();

    Sheet(Node... asks) {
        VBox left = new VBox(asks);
        left.getStyleClass().add("asks-column");
        answers.getStyleClass().add("answers");
        ScrollPane scroll = new ScrollPane(answers);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("answers-scroll");
        setLeft(left);
        setCenter(scroll);
    }

    void answer(List<Node> nodes) {
        answers.getChildren().setAll(nodes);
    }

    /** A heading among the answers. */
    static Node heading(String words) {
        return Words.text(words, "group");
    }
}
