package hornbook.viewer.jobs;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Model;
import hornbook.shared.job.JobBook;
import hornbook.shared.job.JobCard;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.pick.Option;
import hornbook.viewer.pick.Pick;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Notes of a job: taking down as it went, the owner's yes, a quirk that bit. */
public final class Notes implements Acts {
    private final JobBook jobs;
    private final Supplier<Catalogue> catalogue;

    public Notes(JobBook jobs, Supplier<Catalogue> catalogue) {
        this.jobs = jobs;
        this.catalogue = catalogue;
    }

    @Override
    public Map<Act, Begin> begun() {
        return Map.of(
                Act.DOWN,
                Begin.onJob(this::down),
                Act.YES,
                Begin.onJob(this::yes),
                Act.QUIRK,
                Begin.onJob(page -> new Step.Reads(() -> quirk(page.card()))));
    }

    private Step down(JobPage page) {
        return Step.ask(
                new Ask(
                        "The next step of taking down, as it went",
                        "Write it down",
                        Field.text("piece", "What came off", ""),
                        Field.text("how", "How", ""),
                        Field.text("why", "Why then and not later", "")),
                a -> jobs.tookDown(page.card().id(), a.needed("piece", "what came off"), a.text("how"), a.text("why")));
    }

    private Step yes(JobPage page) {
        return Step.ask(
                new Ask(
                        "The owner's yes to what cannot be undone or leaves a mark",
                        "Write it down",
                        Field.text("what", "To what", ""),
                        Field.number("by", "Who said so: a code, never a name", "")),
                a -> jobs.consent(page.card().id(), a.needed("what", "to what"), a.needed("by", "who said so")));
    }

    /** Those its model is known for first. */
    private Step quirk(JobCard card) {
        Catalogue known = catalogue.get();
        Model model = known.models().get(card.model());
        List<String> likely = model == null ? List.of() : model.quirksKnown();
        List<Option> options = new ArrayList<>();
        likely.forEach(id -> options.add(new Option(id, known.title(id), "known of its model")));
        known.quirks().values().stream()
                .filter(quirk -> !likely.contains(quirk.id()))
                .forEach(quirk -> options.add(new Option(quirk.id(), quirk.title(), "")));
        return new Step.Picks(
                new Pick("Which quirk was met? A digit, or a few letters", options),
                quirk -> Step.Does.only(() -> jobs.met(card.id(), quirk)));
    }
}
