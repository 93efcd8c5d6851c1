package hornbook.viewer.gauges;

import hornbook.indexer.fit.FitPlan;
import hornbook.indexer.fit.FitStep;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;

/** A piece before and after its work, seen from the side: what goes is dashed. Across it is drawn thicker than it is. */
final class PieceDrawing extends StackPane {
    private static final double WIDTH = 520;
    private static final double THICK = 34;
    private static final double TOP = 26;

    private final Group drawing = new Group();

    private PieceDrawing(Change along, Change across) {
        getStyleClass().add("piece");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        double to = WIDTH * along.share();
        double thick = THICK * across.share();
        drawing.getChildren().add(box(0, WIDTH, THICK, "goes"));
        drawing.getChildren().add(box((THICK - thick) / 2, to, thick, "stays"));
        arrow(along, to);
        Text across_ = new Text(WIDTH + 12, TOP + THICK / 2 + 5, across.words());
        across_.getStyleClass().add("tick-number");
        drawing.getChildren().add(across_);
        getChildren().add(drawing);
    }

    /** What a step changes of one dimension, mm. */
    private record Change(double from, double to, String name) {
        static final Change NONE = new Change(1, 1, "");

        double share() {
            return Math.clamp(to / Math.max(from, to), 0.15, 1);
        }

        String words() {
            return name.isEmpty() ? "" : name + " " + shown(from) + " \u2192 " + shown(to) + " mm";
        }

        private static String shown(double mm) {
            return java.math.BigDecimal.valueOf(Math.round(mm * 1000) / 1000.0)
                    .stripTrailingZeros()
                    .toPlainString();
        }
    }

    /** Empty where nothing that can be measured becomes smaller. */
    static Optional<PieceDrawing> of(FitPlan plan) {
        Change along = change(plan, true);
        Change across = change(plan, false);
        if (along == Change.NONE && across == Change.NONE) {
            return Optional.empty();
        }
        PieceDrawing drawn = new PieceDrawing(along, across);
        drawn.setAccessibleText((along.words() + " " + across.words()).strip());
        return Optional.of(drawn);
    }

    private static Change change(FitPlan plan, boolean along) {
        return plan.steps().stream()
                .filter(step -> step.unit().equals("mm") && step.along() == along)
                .flatMap(step -> change(step).stream())
                .findFirst()
                .orElse(Change.NONE);
    }

    private static Optional<Change> change(FitStep step) {
        try {
            double to = Double.parseDouble(step.to());
            double from = step.from() == null ? to : Double.parseDouble(step.from());
            return from > to ? Optional.of(new Change(from, to, step.dimension())) : Optional.empty();
        } catch (NumberFormatException word) {
            return Optional.empty();
        }
    }

    private static Rectangle box(double down, double wide, double high, String style) {
        Rectangle box = new Rectangle(0, TOP + down, wide, high);
        box.getStyleClass().add(style);
        return box;
    }

    private void arrow(Change along, double to) {
        if (along == Change.NONE) {
            return;
        }
        Line line = new Line(0, TOP - 8, to, TOP - 8);
        Line end = new Line(to, TOP - 8, to, TOP + THICK + 6);
        line.getStyleClass().add("tick");
        end.getStyleClass().add("cut");
        Text words = new Text(4, TOP - 13, along.words());
        words.getStyleClass().add("tick-number");
        drawing.getChildren().addAll(line, end, words);
    }
}
