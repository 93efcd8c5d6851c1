package hornbook.catalogue.called;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.job.JobCard;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The lines of a job as a person reads them: what the books keep by id bears its name. */
public final class JobWords {
    private final Catalogue known;

    public JobWords(Catalogue known) {
        this.known = known;
    }

    /** What the books keep by that id. */
    public String title(String id) {
        return id.equals("unlisted") ? "not placed" : known.title(id);
    }

    /** What was seen or measured, where, and how it reads. */
    public String finding(JobCard.FindingLine f) {
        String read = f.value().equals("found") ? "" : f.value().replace('-', ' ');
        String left = f.asFoundOrLeft().equals("left") ? "as left" : "";
        return together(
                title(f.what()), title(f.where()), f.unit().isEmpty() ? read : read + " " + f.unit(), left, f.note());
    }

    /** A task with its minutes. */
    public String time(JobCard.TaskLine task) {
        return task.minutes() + " min  " + title(task.task()) + (task.count() > 1 ? " \u00d7 " + task.count() : "");
    }

    private static String together(String... pieces) {
        return Stream.of(pieces).filter(piece -> !piece.isBlank()).collect(Collectors.joining("  "));
    }
}
