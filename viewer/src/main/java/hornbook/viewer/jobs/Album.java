package hornbook.viewer.jobs;

import hornbook.shared.photo.Photos;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Work;
import java.util.function.Consumer;
import javafx.scene.image.Image;

/** The photos of a shop as pictures, read beside the window. */
public final class Album {
    private final Work work;
    private final Photos photos;

    public Album(Work work, Photos photos) {
        this.work = work;
        this.photos = photos;
    }

    /** @param high no higher than this, in points; 0 for every pixel */
    void picture(String file, double high, Consumer<Image> show) {
        work.read(
                progress -> Upright.read(photos.file(file), photos.orientation(file), high),
                new Ends<>(show, missing -> {}));
    }
}
