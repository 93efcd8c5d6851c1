package hornbook.viewer.jobs;

import hornbook.shared.job.JobCard;
import hornbook.shared.photo.Photos;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import java.nio.file.Path;

/** Pictures of a job are kept, each with a word. */
public final class PhotosTaken {
    private final Photos photos;

    public PhotosTaken(Photos photos) {
        this.photos = photos;
    }

    Step keep(JobCard card, Path file) {
        return Step.ask(
                new Ask("Photo " + file.getFileName(), "Keep it", Field.text("word", "What to see on it", "")),
                answers -> photos.add(file, new Photos.About(card.id(), card.horn(), null, answers.text("word"))));
    }
}
