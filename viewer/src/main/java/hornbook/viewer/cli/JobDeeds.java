package hornbook.viewer.cli;

import hornbook.shared.job.JobBook;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.Look;
import hornbook.shared.job.PadFitted;
import hornbook.shared.job.TakeIn;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.Went;
import hornbook.shared.stock.Taking;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is written down in the course of a job, one subcommand each. */
final class JobDeeds {
    private JobDeeds() {}

    /** One thing done on a job, which is shown as it stands after. */
    abstract static class OnJob implements Callable<Integer> {
        @Parameters(index = "0", paramLabel = "JOB", description = "Its number.")
        String job = "";

        private final Frame frame;

        OnJob(Frame frame) {
            this.frame = frame;
        }

        abstract Deed done(Workshop workshop);

        @Override
        public final Integer call() {
            return frame.writing(workshop -> after(frame, workshop, done(workshop), job));
        }
    }

    static int after(Frame frame, Workshop workshop, Deed done, String job) {
        JobCard card = workshop.jobs().job(job).orElseThrow();
        return frame.answer(card, out -> {
            out.println(card.id() + "  " + card.kind() + ", " + card.status() + "  " + card.minutes() + " min");
            out.println("deed " + done.number() + ": " + done.title() + " (“hornbook undo” takes it back)");
        });
    }

    /** A horn comes in. */
    @Command(
            name = "take-in",
            header = "Takes a horn in: opens a job, and a horn that was not here before.",
            footer = "hornbook job take-in --complaint \"low notes burble\" --instrument alto --serial 40?367")
    static final class Take implements Callable<Integer> {
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

        private final Frame frame;

        Take(Frame frame) {
            this.frame = frame;
        }

        @Override
        public Integer call() {
            return frame.writing(workshop -> {
                Deed done = workshop.jobBook()
                        .takeIn(new TakeIn(horn, instrument, serial, mark, kind, complaint, promised, quoted, owner));
                return after(
                        frame,
                        workshop,
                        done,
                        workshop.books().touched(done, Job.class).getFirst());
            });
        }
    }

    /** The clock starts. */
    @Command(
            name = "start",
            header = "Starts the clock on a task; your other clock stops.",
            footer = "hornbook job start j-0237 task-teardown")
    static final class Start extends OnJob {
        @Parameters(
                index = "1",
                paramLabel = "TASK",
                arity = "0..1",
                description = "What is worked on, as task-teardown; goes on with the last one if left out.")
        String task = "";

        @Option(names = "--count", paramLabel = "N", description = "How many cups, keys, screws.")
        int count = 1;

        @Option(names = "--who", paramLabel = "WHO", description = "Initials of who works.")
        @Nullable
        String who;

        Start(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            String hands = workshop.worker(who);
            return task.isEmpty()
                    ? workshop.clocks().goOn(job, hands)
                    : workshop.clocks().start(job, workshop.task(task), count, hands);
        }
    }

    /** The clock stops. */
    @Command(name = "stop", header = "Stops the clock on a job.", footer = "hornbook job stop j-0237 --minutes 25")
    static final class Stop extends OnJob {
        @Option(
                names = "--minutes",
                paramLabel = "N",
                description = "How long it really took, where the clock was forgotten.")
        @Nullable
        Integer minutes;

        @Option(names = "--who", paramLabel = "WHO", description = "Whose clock, where several run.")
        @Nullable
        String who;

        Stop(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.clocks().stop(job, who, minutes);
        }
    }

    /** Seen or measured. */
    @Command(
            name = "find",
            header = "Writes down what was seen or measured.",
            footer = "hornbook job find j-0240 finding-cup-id 31.2 --where cup-f --unit mm --tool tool-caliper")
    static final class Find extends OnJob {
        @Parameters(index = "1", paramLabel = "WHAT", description = "A trait, a finding, a fault or a quirk.")
        String what = "";

        @Parameters(index = "2", paramLabel = "VALUE", arity = "0..1", description = "As read; “found” if left out.")
        String value = "found";

        @Option(names = "--where", paramLabel = "WHERE", description = "On the horn: a cup or key.")
        String where = "";

        @Option(names = "--unit", paramLabel = "UNIT", description = "Of a number: mm, in, g.")
        String unit = "";

        @Option(names = "--tool", paramLabel = "TOOL", description = "What it was read with.")
        @Nullable
        String tool;

        @Option(names = "--left", description = "As left, and not as found.")
        boolean left;

        @Option(names = "--note", paramLabel = "WORDS", description = "Anything more.")
        String note = "";

        Find(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.jobBook().find(job, new Look(what, where, value, unit, left, tool, note));
        }
    }

    /** A pad goes in. */
    @Command(
            name = "pad",
            header = "Notes a pad that went into a cup, and takes it out of its lot.",
            footer = "hornbook job pad j-0240 cup-f 31 --lot lot-0553")
    static final class Pad extends OnJob {
        @Parameters(index = "1", paramLabel = "CUP", description = "Which cup, as cup-f.")
        String cup = "";

        @Parameters(index = "2", paramLabel = "SIZE", description = "The pad's size, mm.")
        BigDecimal size = BigDecimal.ZERO;

        @Option(names = "--lot", paramLabel = "LOT", description = "The lot it came out of.")
        @Nullable
        String lot;

        @Option(names = "--thickness", paramLabel = "MM", description = "The pad's thickness, mm.")
        @Nullable
        BigDecimal thickness;

        Pad(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.jobBook().pad(job, new PadFitted(cup, null, size, thickness, lot, ""));
        }
    }

    /** A part goes in. */
    @Command(
            name = "part",
            header = "Notes parts or supplies used, and takes them out of their lot.",
            footer = "hornbook job part j-0237 lot-0933 2 --for \"bearing sleeves\"")
    static final class Part extends OnJob {
        @Parameters(index = "1", paramLabel = "LOT", description = "The lot they came out of.")
        String lot = "";

        @Parameters(
                index = "2",
                paramLabel = "N",
                arity = "0..1",
                defaultValue = "1",
                description = "How many; one if left out.")
        int pieces = 1;

        @Option(names = "--for", paramLabel = "WORDS", description = "What for.")
        String whatFor = "";

        @Option(names = "--reserve", description = "Take from the reserve all the same.")
        boolean reserve;

        Part(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.stockBook().use(new Taking(lot, pieces, job, whatFor, reserve));
        }
    }

    /** The owner said yes. */
    @Command(
            name = "consent",
            header = "Notes the owner's yes to what cannot be undone or leaves a mark.",
            footer = "hornbook job consent j-0239 \"try the frozen rod\" --by O-040")
    static final class Yes extends OnJob {
        @Parameters(index = "1", paramLabel = "WHAT", description = "What the owner agreed to.")
        String what = "";

        @Option(
                names = "--by",
                paramLabel = "CODE",
                required = true,
                description = "Who said yes: a code, never a name.")
        String by = "";

        Yes(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.jobBook().consent(job, what, by);
        }
    }

    /** How it went. */
    @Command(
            name = "close",
            header = "Closes a job: how it went, in a grade and a sentence.",
            footer = "hornbook job close j-0242 smooth \"the screw was the wrong pitch\"")
    static final class Close extends OnJob {
        @Parameters(index = "1", paramLabel = "GRADE", description = "smooth, fair or rough.")
        String grade = "";

        @Parameters(
                index = "2",
                paramLabel = "SENTENCE",
                arity = "0..1",
                description = "What the next one should know.")
        String sentence = "";

        Close(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            Function<String, Went> read = word -> Arrays.stream(Went.values())
                    .filter(went -> went.name().equalsIgnoreCase(word))
                    .findFirst()
                    .orElseThrow(() -> new BadInput("“" + word + "” is no grade: write smooth, fair or rough"));
            JobBook jobs = workshop.jobBook();
            return jobs.close(job, read.apply(grade), sentence);
        }
    }
}
