package hornbook.viewer.jobs;

import hornbook.catalogue.identify.Question;
import hornbook.indexer.brief.Brief;
import hornbook.indexer.brief.BriefQuestion;
import hornbook.indexer.brief.PastJob;
import hornbook.indexer.search.Hit;
import hornbook.shared.job.JobCard;
import hornbook.viewer.pick.Pick;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;

/** Jobs of the past that may teach something: of this horn's kin, or found by words. */
public final class PastWork implements Acts {
    private final Supplier<Brief> brief;
    private final Function<String, List<Hit>> jobs;

    /** @param jobs finds jobs by words */
    public PastWork(Supplier<Brief> brief, Function<String, List<Hit>> jobs) {
        this.brief = brief;
        this.jobs = jobs;
    }

    @Override
    public Map<Act, Begin> begun() {
        return Map.of(
                Act.PAST,
                Begin.anywhere(() -> new Step.Picks(
                        Pick.byWords("Past jobs: type a fault, a part, a make, a name on the bell", List.of()),
                        job -> new Step.Goes(model -> model.inView().open(job)),
                        words -> jobs.apply(words).stream().map(HitOption::of).toList())));
    }

    /** Past jobs on this horn, its model, its seller's kin, its make; nearest first. */
    List<PastJob> kin(JobCard card) {
        boolean anybody = card.model().equals("unlisted")
                && (card.soldAs() == null || card.soldAs().isBlank());
        if (anybody) {
            return List.of();
        }
        return brief.get().answer(BriefQuestion.of(Question.of(List.of()).about(card.horn()))).jobs().stream()
                .filter(past -> !past.id().equals(card.id()))
                .toList();
    }
}
