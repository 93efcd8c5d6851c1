package hornbook.viewer.cli;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Nearest;
import hornbook.catalogue.hornmap.Usualness;
import hornbook.shared.job.Look;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Something was seen or measured. */
@Command(
        name = "find",
        header = "Writes down what was seen or measured.",
        footer = "hornbook job find j-0240 finding-cup-id 31.2 --where cup-f --unit mm --tool tool-caliper")
final class JobFind extends OnJob {
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

    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d*[.,]?\\d+");

    JobFind(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        Catalogue known = workshop.catalogue();
        if (known.entry(what).isEmpty()) {
            throw new BadInput("“" + what + "” is nothing that is known to be found on a horn: "
                    + Nearest.of(what, known.ids())
                            .map(near -> "did you mean " + near + "?")
                            .orElse("look it up with “hornbook find”"));
        }
        refuse(workshop);
        Deed done = workshop.jobBook().find(job, new Look(what, where, value, unit, left, tool, note));
        outlier(workshop).ifPresent(frame::say);
        return done;
    }

    private void refuse(Workshop workshop) {
        if (!unit.isEmpty() && !NUMBER.matcher(value).matches()) {
            throw new BadInput("“" + value + "” " + unit + ": with a unit it has to be a number, as 31.2");
        }
        workshop.refuseNoCup(where);
        if (unit.equals("mm") && value.startsWith("-")) {
            throw new BadInput(value + " mm is below nought: a size is not");
        }
        if (tool != null && workshop.tools().all().stream().noneMatch(t -> t.id().equals(tool))) {
            throw new BadInput("there is no tool “" + tool + "” in the shop: see “hornbook tool”");
        }
    }

    /** A value out of the usual is asked about, and kept. */
    private Optional<String> outlier(Workshop workshop) {
        return workshop.jobs()
                .job(job)
                .flatMap(card -> workshop.usuals().read(what, card.instrument(), where, value))
                .filter(Usualness::outside)
                .filter(usual -> unit.isEmpty() || usual.unit().equals(unit))
                .map(usual -> usual.question(value));
    }
}
