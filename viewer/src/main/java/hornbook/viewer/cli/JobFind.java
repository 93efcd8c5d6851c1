package hornbook.viewer.cli;

import hornbook.catalogue.called.Called;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Cup;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.MeasureTaken;
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
    @Parameters(
            index = "1",
            paramLabel = "WHAT",
            description = "A finding, a trait, a fault or a quirk, by name or id.")
    String what = "";

    @Parameters(index = "2", paramLabel = "VALUE", arity = "0..1", description = "As read; “found” if left out.")
    String value = "found";

    @Option(names = "--where", paramLabel = "WHERE", description = "On the horn: a cup, as “low B”, or a key.")
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
        Entry found = Called.onHorns(known).find(what);
        String at = Called.cups(known).known(where).map(Cup::id).orElse(where);
        refuse(workshop, found);
        Deed done = workshop.jobBook().find(job, new Look(found.id(), at, value, unit, left, tool, note));
        outlier(workshop, found.id(), at).ifPresent(frame::say);
        return done;
    }

    private void refuse(Workshop workshop, Entry found) {
        if (!unit.isEmpty() && !NUMBER.matcher(value).matches()) {
            throw new BadInput("“" + value + "” " + unit + ": with a unit it has to be a number, as 31.2");
        }
        if (found instanceof MeasureTaken measure && !unit.isEmpty() && !fits(unit, measure.unit())) {
            throw new BadInput("“" + measure.title() + "” is not read in “" + unit + "”"
                    + (measure.unit() == null ? ": leave --unit out" : ": write --unit " + measure.unit()));
        }
        workshop.refuseNoCup(where);
        if (unit.equals("mm") && value.startsWith("-")) {
            throw new BadInput(value + " mm is below nought: a size is not");
        }
        if (tool != null && workshop.tools().all().stream().noneMatch(t -> t.id().equals(tool))) {
            throw new BadInput("there is no tool “" + tool + "” in the shop: see “hornbook tool”");
        }
    }

    private static boolean fits(String unit, @Nullable String usual) {
        return unit.equals(usual) || (unit.equals("in") && "mm".equals(usual));
    }

    /** A value out of the usual is asked about, and kept. */
    private Optional<String> outlier(Workshop workshop, String found, String at) {
        return workshop.jobs()
                .job(job)
                .flatMap(card -> workshop.usuals().read(found, card.instrument(), at, value))
                .filter(Usualness::outside)
                .filter(usual -> unit.isEmpty() || usual.unit().equals(unit))
                .map(usual -> usual.question(value));
    }
}
