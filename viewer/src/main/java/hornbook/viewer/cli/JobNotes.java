package hornbook.viewer.cli;

import hornbook.catalogue.entry.Cup;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.KeyField;
import hornbook.shared.photo.Photos;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** More of what is written down in the course of a job, one subcommand each. */
final class JobNotes {
    private JobNotes() {}

    /** Without a clock. */
    @Command(
            name = "told",
            header = "Notes minutes that no clock saw.",
            footer = "hornbook job told j-0237 task-inspect 20")
    static final class Told extends JobDeeds.OnJob {
        @Parameters(index = "1", paramLabel = "TASK", description = "What was worked on.")
        String task = "";

        @Parameters(index = "2", paramLabel = "MIN", description = "How long, minutes.")
        int minutes;

        @Option(names = "--count", paramLabel = "N", description = "How many cups, keys, screws.")
        int count = 1;

        @Option(
                names = "--on",
                paramLabel = "DATE",
                converter = Day.class,
                description = "Which day; today if left out.")
        @Nullable
        LocalDate day;

        @Option(names = "--who", paramLabel = "WHO", description = "Initials of who worked.")
        @Nullable
        String who;

        Told(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.clocks().told(job, workshop.task(task), count, minutes, day, workshop.worker(who));
        }
    }

    /** Measured. */
    @Command(
            name = "key",
            header = "Writes a measure of a key into the horn's map: rod, thread, spring, rim, resonator.",
            footer = "hornbook job key j-0239 cup-f rod-diameter 2.38")
    static final class Key extends JobDeeds.OnJob {
        @Parameters(index = "1", paramLabel = "KEY", description = "Its cup, as cup-f, or what it is called.")
        String key = "";

        @Parameters(index = "2", paramLabel = "WHAT", description = "rod-diameter, rod-length, thread, spring-size …")
        String what = "";

        @Parameters(index = "3", paramLabel = "VALUE", description = "As read; lengths in mm.")
        String value = "";

        Key(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            KeyField field = Arrays.stream(KeyField.values())
                    .filter(f -> f.word().equals(what))
                    .findFirst()
                    .orElseThrow(() -> new BadInput("“" + what + "” is not measured on a key: name one of "
                            + Arrays.stream(KeyField.values())
                                    .map(KeyField::word)
                                    .collect(Collectors.joining(", "))));
            Cup cup = workshop.catalogue().cups().get(key);
            return workshop.mapBook()
                    .measure(job, cup == null ? key : cup.title(), cup == null ? "" : cup.id(), field, value);
        }
    }

    /** A picture. */
    @Command(
            name = "photo",
            header = "Keeps a photo of the job, without what the camera wrote of place and time.",
            footer = "hornbook job photo j-0237 bench.png --word \"sleeve, torn slots\"")
    static final class Photo extends JobDeeds.OnJob {
        @Parameters(index = "1", paramLabel = "FILE", description = "JPEG or PNG.")
        Path file = Path.of("");

        @Option(names = "--word", paramLabel = "WORDS", description = "What to see on it.")
        String word = "";

        @Option(names = "--on", paramLabel = "DATE", converter = Day.class, description = "The day it was taken.")
        @Nullable
        LocalDate day;

        private final Frame frame;

        Photo(Frame frame) {
            super(frame);
            this.frame = frame;
        }

        @Override
        Deed done(Workshop workshop) {
            JobCard on = workshop.jobs()
                    .job(job)
                    .orElseThrow(() -> new BadInput("there is no job " + job + ": look it up with “hornbook find”"));
            workshop.photos().add(frame.around().here().resolve(file), new Photos.About(job, on.horn(), day, word));
            return workshop.books().deeds(1).getFirst();
        }
    }

    /** Something soaks. */
    @Command(
            name = "timer",
            header = "Notes what soaks, dries or sets, and when it is ready.",
            footer = "hornbook job timer j-0239 \"penetrant on the stack rod\" 90")
    static final class Soak extends JobDeeds.OnJob {
        @Parameters(index = "1", paramLabel = "WHAT", description = "What soaks, dries or sets.")
        String what = "";

        @Parameters(index = "2", paramLabel = "MIN", description = "For how many minutes.")
        int minutes;

        Soak(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            if (minutes <= 0) {
                throw new BadInput(minutes + " minutes is no while: name one or more");
            }
            return workshop.jobBook().timer(job, what, Duration.ofMinutes(minutes));
        }
    }

    /** It is ready. */
    @Command(
            name = "ready",
            header = "Puts a timer away that is done or no longer wanted.",
            footer = "hornbook job ready j-0237 timer-0001")
    static final class Soaked extends JobDeeds.OnJob {
        @Parameters(index = "1", paramLabel = "TIMER", description = "Its number, as “hornbook job show” tells it.")
        String timer = "";

        Soaked(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.jobBook().timerDone(timer);
        }
    }

    /** Where it is. */
    @Command(
            name = "where",
            header = "Notes where the horn or a piece of it is, and what it waits for.",
            footer = "hornbook job where j-0239 horn \"hook 2\" --waits \"lower stack rod\"")
    static final class Where extends JobDeeds.OnJob {
        @Parameters(index = "1", paramLabel = "PIECE", description = "horn, or what is apart from it.")
        String piece = "";

        @Parameters(index = "2", paramLabel = "PLACE", description = "Where it is.")
        String place = "";

        @Option(names = "--waits", paramLabel = "FOR", description = "What it waits for.")
        String waits = "";

        Where(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.jobBook().whereabouts(job, piece, place, waits);
        }
    }

    /** As it went. */
    @Command(
            name = "took-down",
            header = "Notes the next step of taking the horn down, as it went.",
            footer = "hornbook job took-down j-0237 \"lower stack rod\" \"draws out at the bottom\"")
    static final class TookDown extends JobDeeds.OnJob {
        @Parameters(index = "1", paramLabel = "PIECE", description = "What came off.")
        String piece = "";

        @Parameters(index = "2", paramLabel = "HOW", description = "How it came off.")
        String how = "";

        @Option(names = "--why", paramLabel = "WORDS", description = "Why then and not later.")
        String why = "";

        TookDown(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.jobBook().tookDown(job, piece, how, why);
        }
    }

    /** It bit. */
    @Command(
            name = "met",
            header = "Notes that a quirk was met on the job: the next brief knows.",
            footer = "hornbook job met j-0237 q-threaded-bearing")
    static final class Met extends JobDeeds.OnJob {
        @Parameters(index = "1", paramLabel = "QUIRK", description = "Which quirk.")
        String quirk = "";

        Met(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            if (!workshop.catalogue().quirks().containsKey(quirk)) {
                throw new BadInput(
                        "“" + quirk + "” is no quirk that is known: look it up with “hornbook find --kind" + " quirk”");
            }
            return workshop.jobBook().met(job, quirk);
        }
    }
}
