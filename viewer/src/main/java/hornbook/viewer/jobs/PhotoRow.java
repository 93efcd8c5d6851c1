package hornbook.viewer.jobs;

import hornbook.shared.job.JobCard.PhotoLine;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The photos of a job, small, each with its word; a press takes one up. */
final class PhotoRow extends FlowPane {
    private static final double HIGH = 140;

    PhotoRow(List<PhotoLine> photos, Album album, Consumer<PhotoLine> take) {
        getStyleClass().add("photo-row");
        photos.forEach(photo -> getChildren().add(view(photo, album, () -> take.accept(photo))));
    }

    private static Tile view(PhotoLine photo, Album album, Runnable take) {
        ImageView picture = new ImageView();
        picture.setPreserveRatio(true);
        picture.setFitHeight(HIGH);
        album.picture(photo.file(), HIGH, picture::setImage);
        Tile tile = new Tile(take, new VBox(picture, Words.text(photo.word(), "quiet")));
        tile.getStyleClass().add("link");
        tile.setId(photo.id());
        tile.setAccessibleText(
                (photo.word().isBlank() ? "Photo without a word" : "Photo: " + photo.word()) + ", enlarge");
        return tile;
    }
}
