package hornbook.viewer.cli;

import hornbook.shared.job.JobChange;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is agreed about a job, and what comes after it. */
final class JobEnds {
    private JobEnds() {}

    /** Agreed otherwise. */
    @Command(
            name = "change",
            header = "Quotes, promises, lets wait, goes on with or declines a job.",
            footer = "hornbook job change j-0243 --quoted 1700 --promised 2026-11-09")
    static final class Change extends JobDeeds.OnJob {
        @Option(names = "--status", paramLabel = "S", description = "open, waiting or declined.")
        @Nullable
        String status;

        @Option(names = "--quoted", paramLabel = "MIN", description = "Minutes told to the owner.")
        @Nullable
        Integer quoted;

        @Option(names = "--promised", paramLabel = "DATE", converter = Day.class, description = "The day promised.")
        @Nullable
        LocalDate promised;

        @Option(names = "--note", paramLabel = "WORDS", description = "A note, in place of the old one.")
        @Nullable
        String note;

        Change(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            JobStatus wanted = status == null ? null : read(status);
            return workshop.jobBook().change(job, new JobChange(wanted, promised, quoted, note));
        }

        private static JobStatus read(String word) {
            return List.of(JobStatus.OPEN, JobStatus.WAITING, JobStatus.DECLINED).stream()
                    .filter(known -> known.name().equalsIgnoreCase(word))
                    .findFirst()
                    .orElseThrow(
                            () -> new BadInput("“" + word + "” is no status: write open, waiting or declined; a job is"
                                    + " done by “hornbook job close”"));
        }
    }

    /** What it taught. */
    @Command(
            name = "teach",
            header = "Writes what a job taught of a horn (map, order of taking down) into its model's entry.",
            footer = "hornbook job teach j-0243")
    static final class Teach extends JobDeeds.OnJob {
        Teach(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.lessons().teach(job);
        }
    }

    /** It goes back. */
    @Command(
            name = "hand-back",
            header = "Notes that the horn went back to its owner.",
            footer = "hornbook job hand-back j-0234")
    static final class HandBack extends JobDeeds.OnJob {
        HandBack(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.afterCare().handBack(job);
        }
    }

    /** It came by. */
    @Command(
            name = "follow-up",
            header = "Notes the settling-in check, four to eight weeks after.",
            footer = "hornbook job follow-up j-0234 moved \"low C# pad, reseated\"")
    static final class FollowUp extends JobDeeds.OnJob {
        @Parameters(index = "1", paramLabel = "FOUND", description = "held, moved or came-back.")
        String found = "";

        @Parameters(index = "2", paramLabel = "WORDS", arity = "0..1", description = "What moved and why.")
        String words = "";

        FollowUp(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            if (!List.of("held", "moved", "came-back").contains(found)) {
                throw new BadInput("“" + found + "”: write held, moved or came-back");
            }
            return workshop.afterCare().followUp(job, found, words);
        }
    }
}
