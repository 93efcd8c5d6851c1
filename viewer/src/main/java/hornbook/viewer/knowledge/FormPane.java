package hornbook.viewer.knowledge;

import hornbook.catalogue.edit.Spot;
import hornbook.catalogue.entry.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The fields of an entry one below the other, each with what is wrong with it. */
final class FormPane extends ScrollPane {
    private final EditModel model;
    private final VBox list = new VBox();
    private final Folds folds = new Folds(this::layOut);
    private FormMaker maker;
    private int drawn = -1;

    FormPane(EditModel model) {
        this.model = model;
        this.maker = new FormMaker(model, folds);
        list.getStyleClass().add("form");
        setContent(list);
        setFitToWidth(true);
        setFocusTraversable(false);
        getStyleClass().add("form-scroll");
        list.heightProperty().addListener((of, before, now) -> keepInView());
        ChangeListener<Node> moved = (owner, was, now) -> keepInView();
        sceneProperty().addListener((of, before, now) -> {
            if (before != null) {
                before.focusOwnerProperty().removeListener(moved);
            }
            if (now != null) {
                now.focusOwnerProperty().addListener(moved);
            }
        });
    }

    /** Scrolls so far that the field with the keyboard, and what is offered below it, can be seen. */
    private void keepInView() {
        Platform.runLater(() -> {
            Node owner = getScene() == null ? null : getScene().getFocusOwner();
            Node row = owner;
            while (row != null && !(row instanceof FieldRow)) {
                row = row.getParent();
            }
            double over = list.getHeight() - getViewportBounds().getHeight();
            if (row != null && over > 0) {
                bringIn(list.sceneToLocal(row.localToScene(row.getBoundsInLocal())), over);
            }
        });
    }

    private void bringIn(Bounds row, double over) {
        double room = getViewportBounds().getHeight();
        double top = getVvalue() * over;
        if (row.getHeight() > room) {
            return;
        }
        if (row.getMinY() < top) {
            setVvalue(Math.clamp(row.getMinY() / over, 0, 1));
        } else if (row.getMaxY() > top + room) {
            setVvalue(Math.clamp((row.getMaxY() - room) / over, 0, 1));
        }
    }

    void show(EditView view) {
        if (view.turn() != drawn) {
            drawn = view.turn();
            layOut();
        } else {
            maker.follow();
            tell(view);
        }
    }

    private void layOut() {
        double at = getVvalue();
        maker = new FormMaker(model, folds);
        list.getChildren().setAll(maker.fields(model.fields(), Spot.WHOLE));
        tell(model.view());
        String next = folds.takeNext();
        Platform.runLater(() -> {
            setVvalue(at);
            take(next);
        });
    }

    /** Puts the keyboard into the field at a place, or into the nearest that shows. */
    void take(String place) {
        row(place).ifPresent(FieldRow::take);
    }

    void takeFirst() {
        maker.rows().values().stream().findFirst().ifPresent(FieldRow::take);
    }

    private void tell(EditView view) {
        Map<FieldRow, List<Problem>> found = new java.util.LinkedHashMap<>();
        if (view.proposal() != null) {
            view.proposal()
                    .problems()
                    .forEach(problem -> row(problem.field())
                            .ifPresent(row -> found.computeIfAbsent(row, r -> new ArrayList<>())
                                    .add(problem)));
        }
        maker.rows().values().forEach(row -> tell(row, found.get(row)));
    }

    private static void tell(FieldRow row, @Nullable List<Problem> problems) {
        if (problems == null) {
            row.problem("", false);
        } else {
            row.problem(
                    problems.stream().map(FormPane::words).distinct().collect(Collectors.joining("\n")),
                    problems.stream().anyMatch(problem -> problem.setAside() && !missing(problem)));
        }
    }

    /** What is only not there yet is no mistake. */
    private static boolean missing(Problem problem) {
        return problem.why().equals("is missing");
    }

    private static String words(Problem problem) {
        if (missing(problem)) {
            return "to be filled in";
        }
        return problem.why() + "; " + problem.whatToDo();
    }

    /** The field at a place; where that lies in a closed group, the group. */
    private Optional<FieldRow> row(String place) {
        String at = place;
        while (!at.isEmpty()) {
            FieldRow row = maker.rows().get(at);
            if (row != null) {
                return Optional.of(row);
            }
            at = at.contains(".") ? at.substring(0, at.lastIndexOf('.')) : "";
        }
        return Optional.empty();
    }
}
