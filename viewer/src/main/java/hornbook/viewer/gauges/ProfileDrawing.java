package hornbook.viewer.gauges;

import hornbook.viewer.gauges.Profile.Corner;
import java.util.List;
import java.util.Locale;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.text.Text;

/** A screw's thread cut along its axis, to scale; over it, where asked, the hole of a look-alike. */
final class ProfileDrawing extends StackPane {
    private static final double WIDTH = 560;
    private static final double MARGIN = 14;
    private static final int FEWEST_TURNS = 4;

    private final Group drawing = new Group();
    private final double scale;
    private final double crest;

    private ProfileDrawing(double length, double major) {
        getStyleClass().add("profile");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        scale = (WIDTH - 2 * MARGIN) / length;
        crest = major / 2;
        getChildren().add(drawing);
    }

    /** One thread alone, a few turns of it. */
    static ProfileDrawing of(Profile screw) {
        int turns = Math.max(FEWEST_TURNS, (int) Math.floor(5 / screw.pitch()));
        ProfileDrawing drawn = new ProfileDrawing((turns + 0.4) * screw.pitch(), screw.major());
        drawn.body(screw, turns);
        drawn.ruler((turns + 0.4) * screw.pitch(), screw);
        drawn.setAccessibleText(String.format(
                Locale.ROOT, "Thread cut along its axis: pitch %.3f mm, %.1f degrees", screw.pitch(), screw.angle()));
        return drawn;
    }

    /** A screw in the hole of another thread, first turns together; a line where it binds. */
    static ProfileDrawing of(Profile screw, Profile hole, double bindsAfterTurns) {
        int turns = Math.max(FEWEST_TURNS, (int) Math.ceil(bindsAfterTurns) + 2);
        double length = (turns + 0.4) * Math.max(screw.pitch(), hole.pitch());
        ProfileDrawing drawn = new ProfileDrawing(length, Math.max(screw.major(), hole.major()));
        drawn.body(screw, turns);
        drawn.over(hole, turns);
        drawn.ruler(length, screw);
        drawn.binding(bindsAfterTurns * screw.pitch(), screw.depth());
        double drift = Math.abs(screw.pitch() - hole.pitch());
        drawn.setAccessibleText(String.format(
                Locale.ROOT,
                "Screw over the thread of the hole: %.3f mm further out with each turn, binds after %.1f turns",
                drift,
                bindsAfterTurns));
        return drawn;
    }

    private void body(Profile screw, int turns) {
        Polygon body = new Polygon();
        List<Corner> corners = screw.corners(turns);
        corners.forEach(corner -> body.getPoints().addAll(x(corner.along()), y(corner.out())));
        double core = core(screw);
        body.getPoints()
                .addAll(
                        x(corners.getLast().along()),
                        y(core),
                        x(corners.getFirst().along()),
                        y(core));
        body.getStyleClass().add("screw");
        drawing.getChildren().add(body);
    }

    /** How far out the drawn metal begins. */
    private double core(Profile screw) {
        return crest - 2.2 * screw.depth();
    }

    private void over(Profile hole, int turns) {
        Polyline line = new Polyline();
        hole.corners(turns).forEach(corner -> line.getPoints().addAll(x(corner.along()), y(corner.out())));
        line.getStyleClass().add("hole");
        drawing.getChildren().add(line);
    }

    private void binding(double along, double depth) {
        Line line = new Line(x(along), y(crest + depth * 0.5), x(along), y(crest - 2 * depth));
        line.getStyleClass().add("binds");
        drawing.getChildren().add(line);
    }

    /** A millimetre scale below the metal. */
    private void ruler(double length, Profile screw) {
        double base = y(core(screw)) + 6;
        for (int mm = 0; mm <= length; mm++) {
            Line tick = new Line(x(mm), base, x(mm), base + 6);
            tick.getStyleClass().add("tick");
            Text number = new Text(x(mm) - 3, base + 20, mm == 0 ? "0 mm" : String.valueOf(mm));
            number.getStyleClass().add("tick-number");
            drawing.getChildren().addAll(tick, number);
        }
    }

    private double x(double along) {
        return MARGIN + along * scale;
    }

    private double y(double out) {
        return MARGIN + (crest - out) * scale;
    }
}
