package hornbook.viewer.window;

import javafx.application.Platform;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/**
 * One ring, the same on every screen and in all colours, round what has the keyboard. It is laid over the window and
 * follows, so that nothing drawn beneath has to leave room for it. Two lines, one light and one dark, stand out from any
 * ground (WCAG 2.2, technique C40).
 */
final class FocusMark extends Region {
    private static final double BESIDE = 3;
    private static final double MOST_OF_WINDOW = 0.5;

    private final Scene scene;

    private FocusMark(Scene scene) {
        this.scene = scene;
        getStyleClass().add("focus-mark");
        setManaged(false);
        setMouseTransparent(true);
        setVisible(false);
    }

    /** Lays one over whatever the scene shows, now and later. */
    static void over(Scene scene) {
        FocusMark mark = new FocusMark(scene);
        scene.rootProperty().subscribe(root -> {
            if (root instanceof Pane pane) {
                pane.getChildren().add(mark);
            }
        });
        scene.addPostLayoutPulseListener(mark::follow);
        scene.focusOwnerProperty().subscribe(owner -> Platform.requestNextPulse());
    }

    private void follow() {
        Bounds round = round(scene.getFocusOwner());
        setVisible(round != null);
        if (round != null && !round.equals(getBoundsInParent())) {
            resizeRelocate(round.getMinX(), round.getMinY(), round.getWidth(), round.getHeight());
        }
    }

    /** Where it belongs, within what can be seen of the node; a node that fills the window has it inside. */
    private @Nullable Bounds round(@Nullable Node owner) {
        if (owner == null || owner == scene.getRoot() || !(owner.getScene() == scene)) {
            return null;
        }
        Bounds seen = owner.localToScene(owner.getLayoutBounds());
        boolean broad = seen.getWidth() * seen.getHeight() > MOST_OF_WINDOW * scene.getWidth() * scene.getHeight();
        seen = grown(seen, broad ? 0 : BESIDE);
        for (Node above = owner.getParent(); above != null; above = above.getParent()) {
            Node clip = above.getClip();
            if (clip != null) {
                seen = common(seen, grown(above.localToScene(clip.getBoundsInParent()), broad ? 0 : BESIDE));
            }
        }
        seen = common(seen, new BoundingBox(0, 0, scene.getWidth(), scene.getHeight()));
        return seen.getWidth() <= 0 || seen.getHeight() <= 0 ? null : seen;
    }

    private static Bounds grown(Bounds one, double by) {
        return new BoundingBox(
                one.getMinX() - by, one.getMinY() - by, one.getWidth() + 2 * by, one.getHeight() + 2 * by);
    }

    private static Bounds common(Bounds one, Bounds other) {
        double left = Math.max(one.getMinX(), other.getMinX());
        double top = Math.max(one.getMinY(), other.getMinY());
        return new BoundingBox(
                left,
                top,
                Math.max(0, Math.min(one.getMaxX(), other.getMaxX()) - left),
                Math.max(0, Math.min(one.getMaxY(), other.getMaxY()) - top));
    }
}
