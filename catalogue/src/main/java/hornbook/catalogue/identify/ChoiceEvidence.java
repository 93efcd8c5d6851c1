package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Trait;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A trait that is exactly one of its values. */
final class ChoiceEvidence implements Evidence {
    private final Trait trait;
    private final Misses misses;
    private final double[][] shares;
    private final double[][] hand;
    private final double[] background;
    private final double[] backgroundShares;
    private final Teaching teaching;

    /** @param shares by entry over the values of misses; empty for an entry that is silent */
    ChoiceEvidence(Trait trait, Misses misses, double[][] shares, Teaching teaching) {
        this.trait = trait;
        this.misses = misses;
        this.shares = shares;
        this.teaching = teaching;
        this.hand = new double[shares.length][];
        int n = misses.size();
        double[] sum = new double[n];
        double[] sumShares = new double[n];
        int stated = 0;
        for (int e = 0; e < shares.length; e++) {
            double[] own = shares[e];
            if (own.length > 0) {
                stated++;
                hand[e] = answered(own);
                add(sum, hand[e]);
                add(sumShares, own);
            }
        }
        this.background = mean(sum, stated);
        this.backgroundShares = mean(sumShares, stated);
        fillSilent();
    }

    private void fillSilent() {
        for (int e = 0; e < hand.length; e++) {
            if (shares[e].length == 0) {
                hand[e] = background;
            }
        }
    }

    private double[] answered(double[] own) {
        double[] row = new double[own.length];
        for (int v = 0; v < own.length; v++) {
            for (int o = 0; o < row.length; o++) {
                row[o] += own[v] * misses.given(v, o);
            }
        }
        return row;
    }

    private static void add(double[] sum, double[] row) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += row[i];
        }
    }

    private static double[] mean(double[] sum, int stated) {
        double[] mean = new double[sum.length];
        for (int i = 0; i < sum.length; i++) {
            mean[i] = (sum[i] + 1.0 / sum.length) / (stated + 1);
        }
        return mean;
    }

    @Override
    public Trait trait() {
        return trait;
    }

    /** What it can be, in the order of all arrays here. */
    List<String> values() {
        return misses.values();
    }

    @Override
    public double likelihood(int entry, List<Seen> answers, @Nullable String except) {
        if (answers.size() == 1) {
            double sum = 0;
            for (int o : indices(answers.getFirst())) {
                sum += answer(entry, o, except);
            }
            return sum;
        }
        double sum = 0;
        for (double part : weighed(entry, answers, except)) {
            sum += part;
        }
        return sum;
    }

    private double answer(int entry, int o, @Nullable String except) {
        double stated = entry < hand.length ? hand[entry][o] : background[o];
        return teaching.mix(entry, stated, except, seen -> count(seen, o));
    }

    private double count(Seen seen, int o) {
        int[] named = indices(seen);
        for (int index : named) {
            if (index == o) {
                return 1.0 / named.length;
            }
        }
        return 0;
    }

    int[] indices(Seen seen) {
        return switch (seen) {
            case Seen.OneOf one ->
                one.values().stream()
                        .mapToInt(values()::indexOf)
                        .filter(i -> i >= 0)
                        .distinct()
                        .toArray();
            case Seen.Absent absent -> new int[] {values().indexOf(absent.value())};
            default -> new int[0];
        };
    }

    /** Share of each value times the chance of the answers under it; not made to add up to 1. */
    double[] weighed(int entry, List<Seen> answers, @Nullable String except) {
        double[] truth = truth(entry, except);
        for (Seen seen : answers) {
            int[] named = indices(seen);
            for (int v = 0; v < truth.length; v++) {
                double chance = 0;
                for (int o : named) {
                    chance += misses.given(v, o);
                }
                truth[v] *= chance;
            }
        }
        return truth;
    }

    private double[] truth(int entry, @Nullable String except) {
        boolean silent = entry >= shares.length || shares[entry].length == 0;
        double[] start = silent ? backgroundShares : shares[entry];
        if (teaching.of(entry, except).isEmpty()) {
            return start.clone();
        }
        double[] truth = new double[start.length];
        for (int v = 0; v < truth.length; v++) {
            int value = v;
            truth[v] = teaching.mix(entry, start[v], except, seen -> count(seen, value));
        }
        return truth;
    }

    /** Share of each value over all entries that state the trait. */
    double[] atLarge() {
        return backgroundShares.clone();
    }

    Misses misses() {
        return misses;
    }

    @Override
    public int[] outcomes() {
        return new int[] {misses.size()};
    }

    @Override
    public void chances(int entry, int question, double[] into) {
        for (int o = 0; o < misses.size(); o++) {
            into[o] = answer(entry, o, null);
        }
    }

    /** By entry, shares in the order of the values, or empty where the entry says nothing. */
    static double[] shares(Map<String, Double> stated, List<String> values) {
        double[] row = new double[values.size()];
        double sum = 0;
        for (Map.Entry<String, Double> share : stated.entrySet()) {
            int at = values.indexOf(share.getKey());
            if (at >= 0) {
                row[at] += share.getValue();
                sum += share.getValue();
            }
        }
        if (sum <= 0) {
            return new double[0];
        }
        for (int v = 0; v < row.length; v++) {
            row[v] /= sum;
        }
        return row;
    }
}
