package hornbook.viewer.card;

import hornbook.catalogue.entry.CautionLevel;
import hornbook.catalogue.entry.Fault;
import hornbook.catalogue.entry.MeasureTaken;
import hornbook.catalogue.entry.Operation;
import hornbook.catalogue.entry.Practice;
import hornbook.catalogue.entry.Quirk;
import hornbook.catalogue.entry.Task;
import java.util.stream.Collectors;

/** What knowledge of work says: quirks, faults, operations, tasks. */
final class WorkFacts {
    private final Blocks blocks;
    private final Titles titles;

    WorkFacts(Blocks blocks, Titles titles) {
        this.blocks = blocks;
        this.titles = titles;
    }

    void of(Quirk quirk) {
        if (quirk.caution() == CautionLevel.NOTE) {
            blocks.text("", quirk.bites());
        } else {
            String word = quirk.caution() == CautionLevel.STOP ? "Stop. " : "Care. ";
            blocks.heed(word + quirk.bites(), quirk.caution() == CautionLevel.STOP);
        }
        blocks.text("What to do", quirk.whatToDo())
                .text("How to make sure", quirk.confirm())
                .text("Bites at", titles.of(quirk.stage()))
                .links("Tools", titles.wanted(quirk.tools()))
                .links("Parts", titles.wanted(quirk.parts()))
                .links("Supplies", titles.wanted(quirk.supplies()));
    }

    void of(Fault fault) {
        blocks.text(
                        "Causes, the likeliest first",
                        fault.causes().stream()
                                .sorted((a, b) -> Double.compare(b.share(), a.share()))
                                .map(cause -> "%.0f %%  %s".formatted(cause.share() * 100, cause.text()))
                                .collect(Collectors.joining("\n")))
                .text("Check", fault.check())
                .text("Remedy", fault.remedy())
                .text(
                        "Usual minutes",
                        number(fault.minutes().low()) + " to "
                                + number(fault.minutes().high()) + " " + fault.per())
                .links("Quirks that play in", titles.links(fault.quirks()));
    }

    void of(Operation operation) {
        blocks.heed(operation.caution(), false)
                .text(
                        "Changes",
                        operation.changes() + ", " + operation.direction().word())
                .text("First", operation.preconditions())
                .text("Check", operation.check())
                .text("Spoils", operation.spoils())
                .text("Can be taken back", operation.reversible() ? "yes" : "no")
                .links("Tools", titles.links(operation.tools()));
    }

    void of(Task task) {
        blocks.text("Stage", titles.of(task.stage()))
                .text(
                        "Usual minutes",
                        task.medianMinutes().entrySet().stream()
                                        .map(e -> e.getKey() + " " + number(e.getValue()))
                                        .collect(Collectors.joining(", "))
                                + " " + task.unit())
                .text("", task.notes())
                .links("Usually with", titles.links(task.usualWith()))
                .links("For", titles.links(task.faults()));
    }

    void of(Practice practice) {
        blocks.text("", String.join("\n", practice.points()));
    }

    void of(MeasureTaken measure) {
        blocks.text("How", measure.how())
                .text("Unit", measure.unit())
                .text("If it lies outside", measure.outlierMeans())
                .text("Consent", measure.consent());
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
