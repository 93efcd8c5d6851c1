package hornbook.viewer.jobs;

import hornbook.catalogue.hornmap.Lesson;
import hornbook.shared.job.JobCard;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One job as it is read: what is called by ids in the books bears its name here.
 *
 * @param horn what its horn is called
 * @param owner the owner's code, never a name; empty where none was told
 * @param stages in order, each with the minutes clocked on it
 * @param lesson what it taught that its model's entry does not say
 */
public record JobPage(
        JobCard card,
        String horn,
        String owner,
        List<StageLine> stages,
        @Nullable Lesson lesson) {
    /** Keeps its own copy. */
    public JobPage {
        stages = List.copyOf(stages);
    }

    /**
     * A stage of the job.
     *
     * @param running does a clock run on a task of it
     */
    public record StageLine(String id, String title, int minutes, boolean running) {}

    /** Is there still work to do on it? */
    public boolean open() {
        return card.status().equals("open") || card.status().equals("waiting");
    }
}
