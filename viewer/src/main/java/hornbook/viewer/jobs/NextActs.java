package hornbook.viewer.jobs;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The acts, four at most, that most likely come next, by how far the job has come: the stage worked on, else the last that
 * had time (the order of stages.csv, common practice). The clock is always among them while there is work to do.
 */
final class NextActs {
    private NextActs() {}

    static List<Act> of(@Nullable JobPage page) {
        return next(page).filter(act -> act.fits(page)).toList();
    }

    private static Stream<Act> next(@Nullable JobPage page) {
        if (page == null) {
            return Stream.of(Act.PAST);
        }
        if (!page.open()) {
            return handedBack(page)
                    ? Stream.of(Act.FOLLOW_UP)
                    : Stream.of(Act.HAND_BACK, Act.BACK_SHEET, Act.FOLLOW_UP);
        }
        return Stream.concat(Stream.of(Act.CLOCK), inStage(page));
    }

    private static Stream<Act> inStage(JobPage page) {
        return switch (stage(page)) {
            case "", "stage-intake", "stage-play-test-in" -> Stream.of(Act.FINDING, Act.WRONG, Act.PHOTO);
            case "stage-inspect", "stage-quote" -> beforeWork(page);
            case "stage-photograph", "stage-teardown" -> Stream.of(Act.DOWN, Act.FINDING, Act.PHOTO);
            case "stage-clean" -> Stream.of(Act.TIMER, Act.WHERE, Act.FINDING);
            case "stage-padding", "stage-silencing" -> Stream.of(Act.MAP, Act.PART, Act.FINDING);
            case "stage-heights", "stage-regulation" -> Stream.of(Act.MAP, Act.FINDING, Act.PART);
            case "stage-leak-check", "stage-play-test-out" -> Stream.of(Act.FINDING, Act.CLOSE);
            case "stage-hand-back", "stage-write-up", "stage-follow-up" -> Stream.of(Act.TIMES, Act.CLOSE);
            default -> Stream.of(Act.PART, Act.FIT, Act.FINDING);
        };
    }

    /** Until the owner agreed nothing is taken off. */
    private static Stream<Act> beforeWork(JobPage page) {
        return page.card().quotedMin() == null
                ? Stream.of(Act.ESTIMATE, Act.QUOTE, Act.YES)
                : Stream.of(Act.PHOTO, Act.DOWN, Act.PART);
    }

    private static boolean handedBack(JobPage page) {
        return page.card().standing().pieces().stream()
                .anyMatch(piece -> piece.where().contains("handed back"));
    }

    /** Empty where no work was done yet. */
    private static String stage(JobPage page) {
        String last = "";
        for (JobPage.StageLine stage : page.stages()) {
            if (stage.running()) {
                return stage.id();
            }
            last = stage.minutes() > 0 ? stage.id() : last;
        }
        return last;
    }
}
