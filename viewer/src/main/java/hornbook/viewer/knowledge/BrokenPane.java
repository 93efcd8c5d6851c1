package hornbook.viewer.knowledge;

import hornbook.catalogue.entry.Problem;
import hornbook.viewer.widget.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Own files that are not used because of what is wrong with them: each can be mended or taken away. */
final class BrokenPane extends ScrollPane {
    private final KnowledgeModel model;
    private final VBox list = new VBox();

    BrokenPane(KnowledgeModel model) {
        this.model = model;
        list.getStyleClass().add("broken");
        setContent(list);
        setFitToWidth(true);
        getStyleClass().add("form-scroll");
    }

    void show(KnowledgeView view) {
        Map<String, List<Problem>> files = view.broken().stream()
                .collect(Collectors.groupingBy(Problem::file, LinkedHashMap::new, Collectors.toList()));
        list.getChildren().clear();
        if (files.isEmpty()) {
            list.getChildren().add(Words.text("All of the shop's own files are used.", "quiet"));
        }
        files.forEach((file, problems) -> list.getChildren().add(file(file, problems)));
    }

    private Node file(String file, List<Problem> problems) {
        VBox box = new VBox(Words.text(file, "change-field"));
        box.getStyleClass().add("change");
        problems.forEach(problem -> box.getChildren().add(Words.text(line(problem), "field-problem")));
        Button mend = new Button("Mend it");
        mend.setOnAction(pressed -> model.mend(file));
        Button away = new Button("Take the file away");
        away.setOnAction(pressed -> model.takeAwayFile(file));
        FlowPane acts = new FlowPane();
        acts.getStyleClass().add("toggles");
        if (file.endsWith(".json")) {
            acts.getChildren().addAll(mend, away);
        }
        box.getChildren().add(acts);
        return box;
    }

    private static String line(Problem problem) {
        String where = problem.field().isEmpty() ? "" : ChangesPane.title(problem.field()) + " ";
        return where + problem.why() + "; " + problem.whatToDo();
    }
}
