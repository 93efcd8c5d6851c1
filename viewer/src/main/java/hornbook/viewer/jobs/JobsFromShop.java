package hornbook.viewer.jobs;

import hornbook.indexer.search.Hit;
import hornbook.indexer.search.Question;
import hornbook.shared.shop.Job;
import hornbook.viewer.clock.ClockModel;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.sheet.OwnerSheets;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;

/** Makes the screen's model over a shop: each act is given the one service it asks. */
public final class JobsFromShop {
    private static final int MOST = 9;

    private final Workshop shop;
    private final Work work;

    public JobsFromShop(Workshop shop, Work work) {
        this.shop = shop;
        this.work = work;
    }

    /**
     * The model.
     *
     * @param map shows the map of a horn
     * @param where asks into which file a sheet of that name goes
     */
    public JobsModel model(ClockModel clock, Consumer<String> map, Function<String, Optional<Path>> where) {
        PromisedDay days = new PromisedDay(shop.books()::today);
        return new JobsModel(
                work,
                new JobSheets(shop.jobs(), shop.afterCare(), shop::catalogue, shop::lessons, this::owner),
                new PastWork(shop::brief, words -> found(words, "job")),
                new Estimating(shop::catalogue, shop.usualWork(), shop::estimate, shop.plannedWork(), shop.jobBook()),
                new Waiting(shop.standingBook()),
                new PhotosTaken(shop.photos()),
                List.of(
                        new TakingIn(
                                shop.intake(), shop::catalogue, days, new HornsHere(shop.books(), shop::catalogue)),
                        new Elsewhere(clock, map),
                        new Readings(shop.jobBook(), shop::usuals, shop::catalogue, shop.tools()),
                        new PartsTaken(shop.stockBook(), shop.usualWork(), words -> found(words, "lot")),
                        new Timing(shop.clocks(), shop::catalogue),
                        new Notes(shop.jobBook(), shop::catalogue),
                        new Agreeing(shop.jobBook(), days),
                        new Printing(shop.books(), new OwnerSheets(shop, PaperSize.usual()), where),
                        new Ending(shop.closing(), shop.afterCare(), shop::lessons)));
    }

    /** Its photos. */
    public Album album() {
        return new Album(work, shop.photos());
    }

    private String owner(String job) {
        return shop.books().find(Job.class, job).map(Job::ownerCode).orElse("");
    }

    private List<Hit> found(String words, String kind) {
        return shop.search().find(new Question(words, MOST, Set.of(kind))).hits();
    }
}
