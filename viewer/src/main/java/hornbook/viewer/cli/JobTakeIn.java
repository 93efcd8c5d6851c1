package hornbook.viewer.cli;

import hornbook.shared.job.TakeIn;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** A horn comes in. */
@Command(
        name = "take-in",
        header = "Takes a horn in: opens a job, and a horn that was not here before.",
        footer = "hornbook job take-in --complaint \"low notes burble\" --instrument alto --serial 40?367")
final class JobTakeIn extends JobDeed {
    @Option(names = "--horn", paramLabel = "HORN", description = "A horn that was here before, by its number.")
    @Nullable
    String horn;

    @Option(names = "--instrument", paramLabel = "I", description = "Of a new horn: alto, tenor, soprano …")
    String instrument = "alto";

    @Option(names = "--serial", paramLabel = "S", description = "As read; a doubtful digit as ?.")
    String serial = "";

    @Option(names = "--mark", paramLabel = "NAME", description = "A name on it that need not be its maker's.")
    @Nullable
    String mark;

    @Option(names = "--kind", paramLabel = "KIND", description = "overhaul, partial, regulate, quick, neck, body.")
    String kind = "partial";

    @Option(names = "--complaint", paramLabel = "WORDS", required = true, description = "In the owner's words.")
    String complaint = "";

    @Option(
            names = "--promised",
            paramLabel = "DATE",
            converter = Day.class,
            description = "The day it is promised for.")
    @Nullable
    LocalDate promised;

    @Option(names = "--quoted", paramLabel = "MIN", description = "Minutes told to the owner.")
    @Nullable
    Integer quoted;

    @Option(names = "--owner", paramLabel = "CODE", description = "The owner's code, never a name.")
    @Nullable
    String owner;

    @Option(
            names = "--agreed",
            paramLabel = "WORDS",
            description = "What the owner said yes to, that cannot be undone or leaves a mark.")
    @Nullable
    String agreed;

    @Option(names = "--note", paramLabel = "WORDS", description = "What came with it, earlier repairs.")
    String note = "";

    JobTakeIn(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        OneOf.valueOf(workshop.catalogue().traits().get("family-member"), instrument, "is no instrument that is known");
        return workshop.intake()
                .takeIn(new TakeIn(
                        horn, instrument, serial, mark, kind, complaint, promised, quoted, owner, agreed, note));
    }

    @Override
    String job(Workshop workshop, Deed done) {
        return workshop.intake().job(done);
    }
}
