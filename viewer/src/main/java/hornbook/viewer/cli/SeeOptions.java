package hornbook.viewer.cli;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.identify.Question;
import hornbook.catalogue.identify.SeenReader;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Consent;
import hornbook.shared.shop.Job;
import hornbook.viewer.workshop.Workshop;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What was seen of a horn, as options: those of identify, compare and brief. */
final class SeeOptions {
    @Option(
            names = "--see",
            paramLabel = "TRAIT=VALUE",
            description = "A look: bell-brace=three-point; one|other where it may be either; may be given again.")
    List<String> see = List.of();

    @Option(names = "--serial", paramLabel = "S", description = "As read; a doubtful digit as ?.")
    @Nullable
    String serial;

    @Option(names = "--mark", paramLabel = "NAME", description = "A name on the horn, letter for letter.")
    @Nullable
    String mark;

    @Option(names = "--instrument", paramLabel = "I", description = "alto, tenor, soprano, baritone …")
    @Nullable
    String instrument;

    @Option(names = "--job", paramLabel = "JOB", description = "Take the looks written down for this job's horn.")
    @Nullable
    String job;

    @Option(names = "--horn", paramLabel = "HORN", description = "Take the looks written down for this horn.")
    @Nullable
    String horn;

    @Option(names = "--plain", description = "Without what this shop learned, as reference figures are made.")
    boolean plain;

    Question question(Workshop workshop) {
        Catalogue catalogue = workshop.catalogue();
        SeenReader reader = new SeenReader(catalogue);
        return new Question(
                see.stream().map(reader::read).toList(),
                serial,
                mark,
                instrument,
                horn(workshop),
                plain,
                agreed(workshop),
                null);
    }

    private @Nullable String horn(Workshop workshop) {
        if (job == null) {
            return horn;
        }
        return workshop.books()
                .find(Job.class, job)
                .map(Job::horn)
                .orElseThrow(() -> new BadInput("there is no job " + job + ": look it up with “hornbook find”"));
    }

    /** A yes written down on the job lets looks that leave a mark be offered. */
    private boolean agreed(Workshop workshop) {
        return job != null && !workshop.books().where(Consent.class, "job", job).isEmpty();
    }
}
