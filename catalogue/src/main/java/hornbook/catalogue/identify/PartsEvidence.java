package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Trait;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A trait of many values, each there or not and each a question of its own. */
final class PartsEvidence implements Evidence {
    private final Trait trait;
    private final List<String> values;
    private final double[][] chances;
    private final double[] background;
    private final Teaching teaching;

    /** @param stated by entry the chance that each value is there; empty for an entry that is silent */
    PartsEvidence(Trait trait, List<String> values, List<Map<String, Double>> stated, Teaching teaching) {
        this.trait = trait;
        this.values = List.copyOf(values);
        this.teaching = teaching;
        this.chances = new double[stated.size()][values.size()];
        this.background = new double[values.size()];
        for (int v = 0; v < values.size(); v++) {
            fill(v, stated);
        }
    }

    private void fill(int v, List<Map<String, Double>> stated) {
        double sum = 0;
        int n = 0;
        for (int e = 0; e < chances.length; e++) {
            Double chance = stated.get(e).get(values.get(v));
            chances[e][v] = chance == null ? Double.NaN : chance;
            sum += chance == null ? 0 : chance;
            n += chance == null ? 0 : 1;
        }
        background[v] = (sum + 0.5) / (n + 1);
        for (double[] row : chances) {
            row[v] = Double.isNaN(row[v]) ? background[v] : row[v];
        }
    }

    @Override
    public Trait trait() {
        return trait;
    }

    /** What can be there; a value that means "none of them" is not among them. */
    List<String> values() {
        return values;
    }

    @Override
    public double likelihood(int entry, List<Seen> answers, @Nullable String except) {
        double product = 1;
        for (int v = 0; v < values.size(); v++) {
            double there = chance(entry, v, except);
            product *= there * answered(v, true, answers) + (1 - there) * answered(v, false, answers);
        }
        return product;
    }

    /** Chance of the answers about a value, if it is there, or is not. */
    private double answered(int v, boolean truth, List<Seen> answers) {
        double chance = 1;
        for (Seen seen : answers) {
            Boolean said = said(seen, v);
            if (said != null) {
                chance *= said == truth ? 1 - trait.miss() : trait.miss();
            }
        }
        return chance;
    }

    private @Nullable Boolean said(Seen seen, int v) {
        return switch (seen) {
            case Seen.Parts parts -> parts.there().get(values.get(v));
            case Seen.Absent _ -> Boolean.FALSE;
            default -> null;
        };
    }

    private double chance(int entry, int v, @Nullable String except) {
        double stated = entry < chances.length ? chances[entry][v] : background[v];
        List<Taught> taught = teaching.of(entry, except);
        long n = taught.stream().filter(t -> said(t.seen(), v) != null).count();
        if (n == 0) {
            return stated;
        }
        long yes = taught.stream()
                .filter(t -> Boolean.TRUE.equals(said(t.seen(), v)))
                .count();
        return (teaching.weight(entry) * stated + yes) / (teaching.weight(entry) + n);
    }

    /** Chance that a value is there, the answers given. */
    double there(int entry, int v, List<Seen> answers, @Nullable String except) {
        double stated = chance(entry, v, except);
        double yes = stated * answered(v, true, answers);
        double no = (1 - stated) * answered(v, false, answers);
        return yes + no > 0 ? yes / (yes + no) : stated;
    }

    @Override
    public int[] outcomes() {
        int[] two = new int[values.size()];
        Arrays.fill(two, 2);
        return two;
    }

    @Override
    public void chances(int entry, int question, double[] into) {
        double there = chance(entry, question, null);
        into[0] = there * (1 - trait.miss()) + (1 - there) * trait.miss();
        into[1] = 1 - into[0];
    }
}
