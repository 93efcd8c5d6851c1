package hornbook.viewer.paper.brief;

import hornbook.indexer.brief.PastJob;
import hornbook.viewer.paper.Prose;
import hornbook.viewer.paper.Spoken;

/** Past jobs as they are printed. */
final class PastItems {
    private PastItems() {}

    static Prose of(PastJob job, String model) {
        return new Prose()
                .bold(job.tookIn() + " " + job.id() + ",")
                .plain(model + " (" + job.kin().word() + "): " + job.kind() + ","
                        + (job.went() == null ? "" : " went " + job.went())
                        + hours(job)
                        + (job.wentNote().isBlank() ? "." : ": " + job.wentNote() + "."))
                .plain(job.measured().isEmpty() ? "" : "Measured: " + String.join("; ", job.measured()) + ".");
    }

    private static String hours(PastJob job) {
        Integer minutes = job.minutes();
        if (minutes == null) {
            return "";
        }
        String took = Spoken.minutes(minutes);
        Integer quoted = job.quotedMin();
        return quoted == null ? " " + took : " " + took + " (quoted " + Spoken.minutes(quoted) + ")";
    }
}
