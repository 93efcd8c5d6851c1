package hornbook.viewer.widget;

import javafx.scene.Group;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;

/** A field with a foot and a height, in parts from 0 to 1 both ways; drawn as large as it is. */
public abstract class Plot extends Region {
    private static final double LEFT = 64;
    private static final double RIGHT = 84;
    private static final double TOP = 8;
    private static final double FOOT = 24;

    private final Group marks = new Group();

    /** @param tall its height in pixels */
    protected Plot(double tall) {
        getStyleClass().add("plot");
        setMinHeight(tall);
        setPrefHeight(tall);
        marks.setManaged(false);
        marks.setAutoSizeChildren(false);
        getChildren().add(marks);
        widthProperty().subscribe(now -> redraw());
        heightProperty().subscribe(now -> redraw());
    }

    private void redraw() {
        marks.getChildren().clear();
        if (getWidth() > LEFT + RIGHT && getHeight() > TOP + FOOT) {
            draw();
            // What is put in while the window lays itself out would stay without its colours.
            marks.applyCss();
        }
    }

    /** Draws it anew, after its size changed. */
    protected abstract void draw();

    protected final double x(double part) {
        return LEFT + part * (getWidth() - LEFT - RIGHT);
    }

    protected final double y(double part) {
        return getHeight() - FOOT - part * (getHeight() - TOP - FOOT);
    }

    protected final void add(Shape shape, String style) {
        shape.getStyleClass().add(style);
        marks.getChildren().add(shape);
    }

    protected final void line(double fromX, double fromY, double toX, double toY, String style) {
        add(new Line(x(fromX), y(fromY), x(toX), y(toY)), style);
    }

    /** Beside the scale at the left. */
    protected final void scale(double at, String words) {
        Text text = new Text(0, y(at) + 5, words);
        add(text, "plot-words");
        text.setX(LEFT - 8 - text.getLayoutBounds().getWidth());
    }

    /** At the right end of a line. */
    protected final void named(double at, String words) {
        add(new Text(x(1) + 8, y(at) + 5, words), "plot-words");
    }

    /** Under the foot. */
    protected final void under(double at, String words) {
        add(new Text(x(at), getHeight() - 4, words), "plot-words");
    }
}
