package hornbook.viewer.jobs;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.hornmap.Usualness;
import hornbook.catalogue.hornmap.Usuals;
import hornbook.shared.job.JobBook;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.Look;
import hornbook.shared.stock.Tools;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.pick.Option;
import hornbook.viewer.pick.Pick;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** What is found on a horn: a reading with what is usual, a fault, how it is built. An outlier asks, and is kept. */
public final class Readings implements Acts {
    private final JobBook jobs;
    private final Supplier<Usuals> usuals;
    private final Supplier<Catalogue> catalogue;
    private final Tools tools;

    public Readings(JobBook jobs, Supplier<Usuals> usuals, Supplier<Catalogue> catalogue, Tools tools) {
        this.jobs = jobs;
        this.usuals = usuals;
        this.catalogue = catalogue;
        this.tools = tools;
    }

    @Override
    public Map<Act, Begin> begun() {
        return Map.of(Act.FINDING, Begin.onJob(page -> new Step.Reads(() -> choice(page.card()))));
    }

    /** Readings first, then faults, then what can be observed of a horn. */
    private Step choice(JobCard card) {
        List<Option> options = new ArrayList<>();
        usuals.get()
                .all(card.instrument())
                .forEach(u -> options.add(new Option(
                        u.what(), u.title(), u.usual().isEmpty() ? "" : "usual " + u.usual() + " " + u.unit())));
        Catalogue known = catalogue.get();
        known.faults().values().forEach(fault -> options.add(new Option(fault.id(), fault.title(), "fault")));
        known.traits().keySet().forEach(id -> options.add(new Option(id, known.title(id), "how it is built")));
        return new Step.Picks(
                new Pick("What was found? A digit, or a few letters", options),
                what -> new Step.Reads(() -> question(card, what)));
    }

    private Step question(JobCard card, String what) {
        Catalogue known = catalogue.get();
        ReadingAsk ask = new ReadingAsk(known.cups().values(), tools.gauges());
        Trait trait = known.traits().get(what);
        return usual(card, what, "", "")
                .map(usual -> ask.reading(usual))
                .map(question -> new Step.Asks(question, answers -> measured(card, what, answers)))
                .orElseGet(() -> new Step.Asks(
                        trait == null ? ask.fault(known.title(what)) : ReadingAsk.observation(trait),
                        answers -> seen(card, what, answers)));
    }

    private Optional<Usualness> usual(JobCard card, String what, String where, String value) {
        return usuals.get().read(what, card.instrument(), where, value);
    }

    private Consumer<JobsModel> measured(JobCard card, String what, Answers answers) {
        String value = answers.needed("value", "as read");
        Usualness usual = usual(card, what, answers.text("where"), value).orElseThrow();
        find(card, what, usual.unit(), answers);
        return usual.outside() ? model -> model.remark(usual.question(value)) : Step.NO_MORE;
    }

    private Consumer<JobsModel> seen(JobCard card, String what, Answers answers) {
        find(card, what, "", answers);
        return Step.NO_MORE;
    }

    private void find(JobCard card, String what, String unit, Answers answers) {
        String value = answers.text("value");
        jobs.find(
                card.id(),
                new Look(
                        what,
                        answers.text("where"),
                        value.isEmpty() ? "found" : value.replaceFirst("^(\\d+),(\\d+)$", "$1.$2"),
                        value.isEmpty() ? "" : unit,
                        answers.text("left").equals("left"),
                        Given.orNull(answers.text("tool")),
                        answers.text("note")));
    }
}
