package hornbook.viewer.cli;

import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Years;
import hornbook.catalogue.identify.Confirmation;
import hornbook.catalogue.identify.MadeOut;
import hornbook.catalogue.identify.NewModel;
import hornbook.catalogue.identify.SeenReader;
import hornbook.shared.shop.Horn;
import hornbook.viewer.workshop.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is written down of a horn, each one deed that can be undone. */
final class HornDeeds {
    private HornDeeds() {}

    /** What was seen of the horn. */
    static final class Looks {
        @Option(
                names = "--see",
                paramLabel = "TRAIT=VALUE",
                description = "A look to write down with it, as in identify.")
        List<String> see = new ArrayList<>();

        @Option(names = "--serial", paramLabel = "S", description = "As read, ? for each doubtful digit.")
        @Nullable
        String serial;

        @Option(names = "--job", paramLabel = "JOB", description = "On which it was seen; else the horn's newest.")
        @Nullable
        String job;

        MadeOut made(Workshop workshop, String horn, String model, Confirmation by) {
            SeenReader reader = new SeenReader(workshop.catalogue());
            return new MadeOut(
                    horn, model, by, job, see.stream().map(reader::read).toList(), serial);
        }
    }

    /** It is this. */
    @Command(
            name = "confirm",
            header = "Writes down what a horn is and how that is known; the looks go with it.",
            footer =
                    "hornbook horn confirm h-192 m-halverick-drumlin-alto --by traits --see thumb-hook=fixed-metal-soldered")
    static final class Confirm implements Callable<Integer> {
        @Parameters(index = "0", paramLabel = "HORN", description = "Its number.")
        String horn = "";

        @Parameters(index = "1", paramLabel = "MODEL", description = "The model's id, or unlisted.")
        String model = "";

        @Option(
                names = "--by",
                paramLabel = "HOW",
                defaultValue = "traits",
                description = "paper, name, taken-apart or traits. By traits it is likely, by the others sure.")
        String by = "traits";

        @Mixin
        Looks looks = new Looks();

        private final Frame frame;

        Confirm(Frame frame) {
            this.frame = frame;
        }

        @Override
        public Integer call() {
            Confirmation how = OneOf.of(Confirmation.values()).read(by, "says not how it is known");
            return frame.writing(workshop -> {
                Horn now = workshop.confirm().is(looks.made(workshop, horn, model, how));
                return frame.answer(
                        now,
                        out -> out.println(now.id() + " is " + now.model() + ", " + now.sureness() + " (by "
                                + now.identifiedBy() + ")"));
            });
        }
    }

    /** An entry from this horn. */
    @Command(
            name = "entry",
            header = "Makes a model's entry from a horn that no entry describes.",
            footer = "hornbook horn entry h-192 --make k-halverick --pattern \"Back Shelf\" --job j-0235")
    static final class NewEntry implements Callable<Integer> {
        @Parameters(paramLabel = "HORN", description = "Its number.")
        String horn = "";

        @Option(names = "--make", paramLabel = "K", required = true, description = "Id of its make.")
        String make = "";

        @Option(names = "--new-make", description = "The make has no entry yet: --make is its name.")
        boolean newMake;

        @Option(names = "--pattern", paramLabel = "NAME", required = true, description = "The maker's name for it.")
        String pattern = "";

        @Option(names = "--from", paramLabel = "YEAR", description = "Made from that year on.")
        @Nullable
        Integer from;

        @Option(names = "--to", paramLabel = "YEAR", description = "Made up to that year.")
        @Nullable
        Integer to;

        @Mixin
        Looks looks = new Looks();

        private final Frame frame;

        NewEntry(Frame frame) {
            this.frame = frame;
        }

        @Override
        public Integer call() {
            Years years = from == null && to == null ? null : new Years(from, to);
            return frame.writing(workshop -> {
                Model model = workshop.confirm()
                        .entryFrom(
                                looks.made(workshop, horn, "unlisted", Confirmation.TAKEN_APART),
                                new NewModel(make, newMake, pattern, years));
                return frame.answer(model, out -> out.println(model.id() + "  " + model.title() + ", from " + horn));
            });
        }
    }
}
