package hornbook.viewer.jobs;

import hornbook.indexer.search.Hit;
import hornbook.shared.job.UsualWork;
import hornbook.shared.stock.StockBook;
import hornbook.shared.stock.Taking;
import hornbook.viewer.pick.Option;
import hornbook.viewer.pick.Pick;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Parts go out of their drawers for a job: those that such jobs usually want, or any that a search finds. */
public final class PartsTaken implements Acts {
    private static final int MOST = 9;

    private final StockBook stock;
    private final UsualWork usual;
    private final Function<String, List<Hit>> lots;

    /** @param lots finds lots by words */
    public PartsTaken(StockBook stock, UsualWork usual, Function<String, List<Hit>> lots) {
        this.stock = stock;
        this.usual = usual;
        this.lots = lots;
    }

    @Override
    public Map<Act, Begin> begun() {
        return Map.of(
                Act.PART,
                Begin.onJob(page -> new Step.Reads(() -> choice(page.card().id()))));
    }

    private Step choice(String job) {
        List<Option> options = usual.parts(job, MOST).stream()
                .map(part -> new Option(part.lot(), part.title(), part.count() + " there  \u00b7  " + part.lot()))
                .toList();
        return new Step.Picks(
                new Pick("Which part? A digit takes one; letters search all lots", options),
                lot -> Step.Does.only(() -> stock.use(new Taking(lot, 1, job, "", false))),
                words -> lots.apply(words).stream().map(HitOption::of).toList());
    }
}
