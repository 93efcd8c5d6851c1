package hornbook.catalogue.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Past clocks with the effects found in them. */
final class History {
    static final int TASK = 0;
    static final int INSTRUMENT = 1;
    static final int MAKE = 2;
    static final int MODEL = 3;
    static final int WHO = 4;
    static final int JOB = 5;

    /** Where to begin: effects of about a tenth, a job as slow as a make (from memory); a few clocks move it. */
    private static final double[] START = {0.01, 0.01, 0.02, 0.01, 0.01, 0.01};

    /** The variance that these effects make together. */
    static final double USUAL_SPREAD = Arrays.stream(START).sum();

    /** For how many makes, models, jobs that beginning counts: with few of them it is not given up for nought. */
    private static final double START_WORTH = 2;

    private static final int FEW = 8;
    private static final int STEPS = 200;

    private final List<Clocked> clocked;
    private final Levels[] levels = {new Levels(), new Levels(), new Levels(), new Levels(), new Levels(), new Levels()
    };
    private final MixedModel model;
    private final Effects effects;
    private final boolean fitted;

    History(List<Clocked> all, Book book) {
        this(all, book, null);
    }

    /** @param near effects found in a little less of the same history: where the search begins */
    History(List<Clocked> all, Book book, @Nullable Effects near) {
        clocked = all;
        List<Observation> observations = new ArrayList<>();
        for (Clocked c : all) {
            if (book.knows(c)) {
                observations.add(observed(c, book));
            }
        }
        int[] sizes = new int[levels.length];
        for (int k = 0; k < sizes.length; k++) {
            sizes[k] = levels[k].size();
        }
        model = new MixedModel(sizes, observations);
        fitted = observations.size() >= FEW;
        if (!fitted) {
            effects = model.solve(START, 1);
        } else {
            MixedModel.Prior prior = new MixedModel.Prior(START, START_WORTH);
            effects = near == null
                    ? model.fit(START, 1, STEPS, prior)
                    : model.fit(near.variances(), near.rest(), STEPS, prior);
        }
    }

    private Observation observed(Clocked c, Book book) {
        int[] at = {
            levels[TASK].add(c.task()),
            levels[INSTRUMENT].add(c.instrument()),
            levels[MAKE].add(c.make()),
            levels[MODEL].add(c.model()),
            levels[WHO].add(c.who()),
            levels[JOB].add(c.job())
        };
        double sigma = book.task(c.task()).sigma();
        return new Observation(book.log(c), 1 / (sigma * sigma), at);
    }

    Effects effects() {
        return effects;
    }

    /** Where the effect of a level stands among the effects, -1 where the shop has not met it. */
    int place(int factor, @Nullable String name) {
        int level = levels[factor].of(name);
        return level < 0 ? -1 : model.place(factor, level);
    }

    /** On how many a factor's spread rests: those met, and what the beginning counts for; without clocks it is given. */
    double freedom(int factor) {
        return fitted ? levels[factor].size() + START_WORTH : Double.POSITIVE_INFINITY;
    }

    /** Jobs with clocks of which something holds. */
    int jobs(Predicate<Clocked> holds) {
        Set<String> jobs = new HashSet<>();
        clocked.stream().filter(holds).forEach(c -> jobs.add(c.job()));
        return jobs.size();
    }
}
