package hornbook.viewer.jobs;

import hornbook.shared.job.JobCard.PhotoLine;
import hornbook.viewer.widget.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The photos of a job, small, each with its word. */
final class PhotoRow extends FlowPane {
    private static final double HIGH = 140;

    PhotoRow(List<PhotoLine> photos, Function<String, Path> file) {
        getStyleClass().add("photo-row");
        photos.forEach(photo -> getChildren().add(view(photo, file.apply(photo.file()))));
    }

    /** Read beside the window, no larger than it is shown. */
    private static VBox view(PhotoLine photo, Path file) {
        ImageView picture = new ImageView(new Image(file.toUri().toString(), 0, HIGH, true, true, true));
        picture.setAccessibleText(photo.word().isBlank() ? "Photo without a word" : "Photo: " + photo.word());
        return new VBox(picture, Words.text(photo.word(), "quiet"));
    }
}
