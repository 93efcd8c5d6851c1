package hornbook.viewer.widget;

import hornbook.catalogue.picture.Picture;
import hornbook.catalogue.picture.Shape;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.layout.Region;
import javafx.scene.shape.SVGPath;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.transform.Scale;

/**
 * A drawing, as large as its place allows and in its middle. The window's style sheet colours its pens, so that it is
 * itself in every look; a screen reader says what is to be seen. Shapes that stand for something bear its id.
 */
public final class PictureView extends Region {
    private final Picture picture;
    private final Group drawing = new Group();
    private final Scale scale = new Scale(1, 1, 0, 0);

    public PictureView(Picture picture) {
        this.picture = picture;
        picture.shapes().forEach(shape -> drawing.getChildren().add(path(shape)));
        drawing.getTransforms().add(scale);
        drawing.setManaged(false);
        drawing.setAutoSizeChildren(false);
        getChildren().add(drawing);
        getStyleClass().add("picture");
        setMouseTransparent(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(picture.alt());
    }

    private static SVGPath path(Shape shape) {
        SVGPath path = new SVGPath();
        path.setContent(shape.absolute());
        path.setStrokeLineCap(StrokeLineCap.ROUND);
        path.setStrokeLineJoin(StrokeLineJoin.ROUND);
        path.getStyleClass().add("pen-" + shape.pen().word());
        if (!shape.id().isEmpty()) {
            path.setId(shape.id());
        }
        return path;
    }

    @Override
    protected void layoutChildren() {
        double size = Math.min(getWidth() / picture.width(), getHeight() / picture.height());
        scale.setX(size);
        scale.setY(size);
        drawing.setLayoutX((getWidth() - size * picture.width()) / 2);
        drawing.setLayoutY((getHeight() - size * picture.height()) / 2);
    }
}
