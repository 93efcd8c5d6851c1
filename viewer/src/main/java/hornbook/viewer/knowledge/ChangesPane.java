package hornbook.viewer.knowledge;

import hornbook.catalogue.edit.Difference;
import hornbook.catalogue.edit.Field;
import hornbook.catalogue.edit.Proposal;
import hornbook.catalogue.entry.Problem;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** What is still to be put right, and what saving would change: before and after, field by field. */
final class ChangesPane extends VBox {
    private final Consumer<String> take;

    /** @param take puts the keyboard into a field */
    ChangesPane(Consumer<String> take) {
        this.take = take;
        getStyleClass().add("changes");
    }

    void show(EditView view) {
        Proposal proposal = view.proposal();
        if (proposal == null) {
            return;
        }
        List<Node> nodes = new ArrayList<>();
        List<Problem> stops =
                proposal.problems().stream().filter(Problem::setAside).toList();
        if (!stops.isEmpty()) {
            nodes.add(Words.text("Still to be put right", "heading"));
            stops.forEach(problem -> nodes.add(problem(problem)));
        }
        nodes.add(Words.text("What saving changes", "heading"));
        List<Difference> changes = proposal.changes().stream()
                .filter(change -> told(change, view.origin()))
                .toList();
        if (changes.isEmpty()) {
            nodes.add(Words.text("Nothing yet.", "quiet"));
        }
        changes.forEach(change -> nodes.add(change(change)));
        getChildren().setAll(nodes);
    }

    /** What was not answered yet is no change. */
    private static boolean told(Difference change, Origin origin) {
        return switch (change.field()) {
            case "source" -> origin.asBefore() || origin.basis() != null;
            case "sureness" -> !origin.sureness().isBlank();
            default -> true;
        };
    }

    private Node problem(Problem problem) {
        String words = switch (problem.field()) {
            case "source" -> "Say where you know it from.";
            case "sureness" -> "Say how sure it is.";
            default -> title(problem.field()) + " " + problem.why();
        };
        Tile tile = new Tile(() -> take.accept(problem.field()), Words.text(words, "field-problem"));
        tile.getStyleClass().add("link");
        tile.setAccessibleText(words);
        return tile;
    }

    private static Node change(Difference change) {
        VBox box = new VBox(Words.text(title(change.field()), "change-field"));
        box.getStyleClass().add("change");
        if (change.before() != null) {
            box.getChildren().add(Words.text("was: " + change.before(), "was"));
        }
        box.getChildren()
                .add(Words.text(
                        change.after() == null ? "goes" : change.after(), change.after() == null ? "goes" : "becomes"));
        return box;
    }

    static String title(String field) {
        return Arrays.stream(field.split("\\.")).map(Field::title).collect(Collectors.joining(" \u203a "));
    }
}
