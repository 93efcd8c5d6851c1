package hornbook.viewer.hand;

import hornbook.shared.stock.OpenJobs;
import hornbook.shared.stock.Stock;
import java.util.Optional;

/** Pulls a drawer: what is in it, and what one needs at hand to work on it. */
public final class Pull {
    private final Stock stock;
    private final OpenJobs jobs;

    public Pull(Stock stock, OpenJobs jobs) {
        this.stock = stock;
        this.jobs = jobs;
    }

    /** The drawer or place meant, as {@link Stock#drawer} understands it. */
    public Optional<Opened> drawer(String called) {
        return stock.drawer(called).map(card -> new Opened(card, jobs.all()));
    }
}
