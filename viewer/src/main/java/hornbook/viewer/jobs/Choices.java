package hornbook.viewer.jobs;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.entry.Trait;
import hornbook.indexer.search.Hit;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.UsualWork.UsualPart;
import hornbook.viewer.ask.Field.Choice;
import hornbook.viewer.pick.Option;
import hornbook.viewer.pick.Pick;
import java.util.ArrayList;
import java.util.List;

/** The choices that acts begin with. */
final class Choices {
    private static final String TYPE = ", or a few letters";

    private final JobsAsked asked;

    Choices(JobsAsked asked) {
        this.asked = asked;
    }

    /** Readings first, then faults, then what can be observed of a horn. */
    Pick findings(JobCard card) {
        List<Option> options = new ArrayList<>();
        asked.findings(card.instrument())
                .forEach(u -> options.add(new Option(
                        u.what(), u.title(), u.usual().isEmpty() ? "" : "usual " + u.usual() + " " + u.unit())));
        Catalogue known = asked.catalogue();
        known.faults().values().forEach(fault -> options.add(new Option(fault.id(), fault.title(), "fault")));
        known.traits().values().stream()
                .map(Trait::id)
                .forEach(id -> options.add(new Option(id, asked.title(id), "how it is built")));
        return new Pick("What was found? A digit" + TYPE, options);
    }

    Pick parts(JobCard card) {
        return new Pick("Which part? A digit takes one; letters search all lots", parts(asked.usualParts(card.id())));
    }

    private static List<Option> parts(List<UsualPart> parts) {
        return parts.stream()
                .map(part -> new Option(part.lot(), part.title(), part.count() + " there  \u00b7  " + part.lot()))
                .toList();
    }

    /** What the search found. */
    static Pick found(Pick before, List<Hit> hits) {
        return before.found(hits.stream()
                .map(hit -> new Option(hit.id(), hit.title(), note(hit)))
                .toList());
    }

    private static String note(Hit hit) {
        String there = hit.onHand() == null ? "" : hit.onHand() + " there  \u00b7  ";
        String drawer = hit.drawerLabel() == null ? "" : hit.drawerLabel() + "  \u00b7  ";
        return there + drawer + hit.id();
    }

    /** Those its model is known for first. */
    Pick quirks(JobCard card) {
        Catalogue known = asked.catalogue();
        Model model = known.models().get(card.model());
        List<String> likely = model == null ? List.of() : model.quirksKnown();
        List<Option> options = new ArrayList<>();
        likely.forEach(id -> options.add(new Option(id, asked.title(id), "known of its model")));
        known.quirks().values().stream()
                .filter(quirk -> !likely.contains(quirk.id()))
                .forEach(quirk -> options.add(new Option(quirk.id(), quirk.title(), "")));
        return new Pick("Which quirk was met? A digit" + TYPE, options);
    }

    Pick tasks(JobCard card) {
        return new Pick(
                "Which work is expected too? A digit" + TYPE,
                asked.catalogue().tasks().values().stream()
                        .filter(task -> task.medianMinutes().containsKey(card.instrument()))
                        .map(task -> new Option(task.id(), task.title(), unit(task)))
                        .toList());
    }

    private static String unit(Task task) {
        return task.unit();
    }

    static Pick past() {
        return new Pick("Past jobs: type a fault, a part, a make, a name on the bell", List.of());
    }

    /** Where on the horn: nowhere in particular, or a cup. */
    List<Choice> cups() {
        List<Choice> cups = new ArrayList<>();
        cups.add(new Choice("", "the whole horn"));
        asked.catalogue().cups().values().forEach(cup -> cups.add(new Choice(cup.id(), cup.title())));
        return cups;
    }
}
