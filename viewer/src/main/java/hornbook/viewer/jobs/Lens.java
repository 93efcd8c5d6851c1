package hornbook.viewer.jobs;

import hornbook.shared.job.JobCard.PhotoLine;
import hornbook.viewer.widget.Words;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;

/**
 * A photo, large: the whole of it first, then nearer down to its single pixels. Plus and minus, arrows, wheel and
 * finger move it; Esc puts it away.
 */
final class Lens extends BorderPane {
    private static final double STEP = 1.25;
    private static final double ARROW = 60;

    /** So many points of the screen a pixel may fill. */
    private static final double NEAREST = 16;

    private final ImageView picture = new ImageView();
    private final Pane stage = new Pane(picture);
    private final Label word = Words.text("", "lot-title");
    private final Label scale = new Label();

    private double near = 1;
    private double centreX;
    private double centreY;
    private double grabX;
    private double grabY;

    /** @param close puts it away */
    Lens(Runnable close) {
        getStyleClass().add("lens");
        stage.getStyleClass().add("lens-stage");
        stage.setMinSize(0, 0);
        Rectangle clip = new Rectangle();
        clip.widthProperty().bind(stage.widthProperty());
        clip.heightProperty().bind(stage.heightProperty());
        stage.setClip(clip);
        scale.setMinWidth(Region.USE_PREF_SIZE);
        HBox head = new HBox(
                scale,
                button("Whole  0", this::whole),
                button("Pixels  1", () -> zoom(1)),
                button("Away  \u2212", () -> zoom(near / STEP)),
                button("Near  +", () -> zoom(near * STEP)),
                button("Put away  Esc", close));
        head.getStyleClass().add("panel-head");
        setTop(new VBox(word, head));
        setCenter(stage);
        setFocusTraversable(true);
        stage.widthProperty().subscribe(now -> whole());
        stage.heightProperty().subscribe(now -> whole());
        stage.addEventHandler(ScrollEvent.SCROLL, this::wheel);
        stage.addEventHandler(MouseEvent.MOUSE_PRESSED, this::grab);
        stage.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    }

    private static Button button(String words, Runnable act) {
        Button button = new Button(words);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setFocusTraversable(false);
        button.setOnAction(pressed -> act.run());
        return button;
    }

    /** Takes a photo up. */
    void show(PhotoLine photo, Album album) {
        String words = photo.word().isBlank() ? "Photo without a word" : photo.word();
        word.setText(words);
        setAccessibleText("Photo: " + words + ". Plus and minus bring it nearer and away, arrows move it.");
        picture.setImage(null);
        album.picture(photo.file(), 0, this::show);
        requestFocus();
    }

    private void show(Image image) {
        picture.setImage(image);
        whole();
    }

    /** Points of the screen a pixel. */
    double near() {
        return near;
    }

    private double width() {
        return picture.getImage() == null ? 1 : picture.getImage().getWidth();
    }

    private double height() {
        return picture.getImage() == null ? 1 : picture.getImage().getHeight();
    }

    private void whole() {
        near = fitting();
        centreX = width() / 2;
        centreY = height() / 2;
        place();
    }

    private double fitting() {
        double fit = Math.min(stage.getWidth() / width(), stage.getHeight() / height());
        return fit > 0 ? fit : 1;
    }

    private void zoom(double to) {
        near = Math.clamp(to, Math.min(fitting(), 1), Math.max(fitting(), NEAREST));
        place();
    }

    /** The point that is looked at lies in the middle. Near to, each pixel is seen as it is. */
    private void place() {
        picture.setSmooth(near < 2);
        picture.setFitWidth(width() * near);
        picture.setFitHeight(height() * near);
        picture.relocate(stage.getWidth() / 2 - centreX * near, stage.getHeight() / 2 - centreY * near);
        scale.setText(Math.round(near * 100) + " %");
    }

    private void move(double x, double y) {
        centreX = Math.clamp(centreX + x / near, 0, width());
        centreY = Math.clamp(centreY + y / near, 0, height());
        place();
    }

    private void wheel(ScrollEvent wheel) {
        if (wheel.getDeltaY() != 0) {
            zoom(wheel.getDeltaY() > 0 ? near * STEP : near / STEP);
        }
        wheel.consume();
    }

    private void grab(MouseEvent mouse) {
        grabX = mouse.getX();
        grabY = mouse.getY();
        requestFocus();
    }

    private void drag(MouseEvent mouse) {
        move(grabX - mouse.getX(), grabY - mouse.getY());
        grab(mouse);
    }

    private void pressed(KeyEvent key) {
        switch (key.getCode()) {
            case PLUS, ADD, EQUALS -> zoom(near * STEP);
            case MINUS, SUBTRACT -> zoom(near / STEP);
            case DIGIT0, NUMPAD0 -> whole();
            case DIGIT1, NUMPAD1 -> zoom(1);
            case LEFT -> move(-ARROW, 0);
            case RIGHT -> move(ARROW, 0);
            case UP -> move(0, -ARROW);
            case DOWN -> move(0, ARROW);
            default -> {
                return;
            }
        }
        key.consume();
    }
}
