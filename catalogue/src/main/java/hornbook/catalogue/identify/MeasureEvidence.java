package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Normal;
import hornbook.catalogue.entry.Span;
import hornbook.catalogue.entry.Trait;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A trait that is measured, mm. One reading in a hundred is anything in the trait's span. */
final class MeasureEvidence implements Evidence {
    private static final double WILD = 0.01;
    private static final double MISSED = 6;
    private static final double SILENT_WEIGHT = 4;

    private final Trait trait;
    private final List<Optional<Normal>> stated;
    private final Span span;
    private final double gauge;
    private final Teaching teaching;
    private final Bins bins;

    /** @param stated by entry; empty for an entry that is silent */
    MeasureEvidence(Trait trait, List<Optional<Normal>> stated, Teaching teaching) {
        this.trait = trait;
        this.stated = List.copyOf(stated);
        this.span = Objects.requireNonNullElse(trait.span(), new Span(0, 1000));
        this.gauge = Objects.requireNonNullElse(trait.spread(), 0.1);
        this.teaching = teaching;
        this.bins = new Bins(stated.stream().flatMap(Optional::stream).toList(), gauge, span);
    }

    @Override
    public Trait trait() {
        return trait;
    }

    @Override
    public double likelihood(int entry, List<Seen> answers, @Nullable String except) {
        Seen.@Nullable Measured reading = mean(answers);
        if (reading == null) {
            return 1;
        }
        double spread = reading.spread() > 0 ? reading.spread() : gauge;
        return density(entry, reading.mm(), spread, except);
    }

    /** Several readings are as one of their mean, taken with a better gauge. */
    private Seen.@Nullable Measured mean(List<Seen> answers) {
        List<Seen.Measured> all = answers.stream()
                .filter(Seen.Measured.class::isInstance)
                .map(Seen.Measured.class::cast)
                .toList();
        if (all.size() < 2) {
            return all.isEmpty() ? null : all.getFirst();
        }
        double mm = all.stream().mapToDouble(Seen.Measured::mm).average().orElseThrow();
        double one = all.stream()
                .mapToDouble(m -> m.spread() > 0 ? m.spread() : gauge)
                .average()
                .orElseThrow();
        return new Seen.Measured(trait.id(), mm, one / Math.sqrt(all.size()));
    }

    private double density(int entry, double mm, double spread, @Nullable String except) {
        Normal own = normal(entry, except);
        if (own != null) {
            return around(own, mm, spread);
        }
        double sum = 0;
        int n = 0;
        for (Optional<Normal> other : stated) {
            if (other.isPresent()) {
                sum += around(other.get(), mm, spread);
                n++;
            }
        }
        double background = (sum + 1 / (span.high() - span.low())) / (n + 1);
        return silentTaught(entry, background, mm, spread, except);
    }

    private double silentTaught(int entry, double background, double mm, double spread, @Nullable String except) {
        List<Taught> own = teaching.of(entry, except);
        if (own.isEmpty()) {
            return background;
        }
        double sum = SILENT_WEIGHT * background;
        for (Taught taught : own) {
            double seen = taught.seen() instanceof Seen.Measured m ? m.mm() : mm;
            sum += around(new Normal(seen, Math.hypot(spread, bins.usualSd())), mm, spread);
        }
        return sum / (SILENT_WEIGHT + own.size());
    }

    private double around(Normal own, double mm, double spread) {
        double near = bell(mm - own.mean(), Math.hypot(own.sd(), spread));
        double far = bell(mm - own.mean(), Math.hypot(own.sd(), MISSED * spread));
        return (1 - WILD) * ((1 - trait.miss()) * near + trait.miss() * far) + WILD / (span.high() - span.low());
    }

    private static double bell(double x, double sd) {
        return Math.exp(-0.5 * x * x / (sd * sd)) / (sd * Math.sqrt(2 * Math.PI));
    }

    /** Mean and spread of an entry as its horns have moved the mean; null where nothing is stated. */
    @Nullable
    Normal normal(int entry, @Nullable String except) {
        if (entry >= stated.size() || stated.get(entry).isEmpty()) {
            return null;
        }
        Normal own = stated.get(entry).get();
        List<Taught> taught = teaching.of(entry, except);
        if (taught.isEmpty()) {
            return own;
        }
        double sum = teaching.weight(entry) * own.mean();
        for (Taught t : taught) {
            sum += t.seen() instanceof Seen.Measured m ? m.mm() : own.mean();
        }
        return new Normal(sum / (teaching.weight(entry) + taught.size()), own.sd());
    }

    /** Chance that the true measure lies in the range, readings given. */
    double within(int entry, double low, double high, List<Seen> answers, @Nullable String except) {
        Normal own = normal(entry, except);
        Seen.@Nullable Measured reading = mean(answers);
        if (own == null && reading == null) {
            return bins.shareWithin(low, high);
        }
        Normal truth = reading == null ? Objects.requireNonNull(own) : blend(own, reading);
        return Bell.below(high, truth) - Bell.below(low, truth);
    }

    private Normal blend(@Nullable Normal own, Seen.Measured reading) {
        double spread = reading.spread() > 0 ? reading.spread() : gauge;
        if (own == null) {
            return new Normal(reading.mm(), spread);
        }
        double a = 1 / (own.sd() * own.sd());
        double b = 1 / (spread * spread);
        return new Normal((a * own.mean() + b * reading.mm()) / (a + b), Math.sqrt(1 / (a + b)));
    }

    @Override
    public int[] outcomes() {
        return new int[] {bins.size()};
    }

    @Override
    public void chances(int entry, int question, double[] into) {
        Normal own = normal(entry, null);
        if (own == null) {
            bins.background(into);
            return;
        }
        bins.chances(own, trait.miss(), into);
    }
}
