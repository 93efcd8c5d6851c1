package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Normal;
import hornbook.catalogue.entry.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

/** Horns drawn from the entries and asked about, look by look, until nine in ten are on one of them. */
final class Trial {
    private static final double SURE = 0.9;

    private final Knowledge knowledge;
    private final double exponent;
    private final double wrong;
    private final Random random;

    /** How the next look is chosen. */
    enum Order {
        /** As the answer has them. */
        AS_OFFERED,
        /** What tells most of which horn it is, for its cost. */
        GAIN_FOR_COST,
        /** By chance, among traits that some entry states. */
        RANDOM,
        /** By chance, among all traits there are. */
        RANDOM_OF_ALL
    }

    /** Looks taken, and the place of the truth, from 1. */
    record Outcome(int looks, int place) {}

    /** @param wrong share of answers that are replaced by a wrong one; 0: looks go wrong as the traits say */
    Trial(Knowledge knowledge, double exponent, double wrong, long seed) {
        this.knowledge = knowledge;
        this.exponent = exponent;
        this.wrong = wrong;
        this.random = new Random(seed);
    }

    /** An entry, by how often it comes through the door. */
    int draw() {
        double[] prior = standing(List.of()).prior();
        return pick(Arrays.copyOf(prior, prior.length - 1));
    }

    Outcome ask(int truth, Order order, int most) {
        List<Seen> seen = new ArrayList<>();
        Map<String, Evidence> left = left(order);
        Standing standing = standing(seen);
        while (best(standing) < SURE && seen.size() < most && !left.isEmpty()) {
            Evidence next = order == Order.RANDOM || order == Order.RANDOM_OF_ALL
                    ? left.values().iterator().next()
                    : next(order, standing, left);
            left.remove(next.trait().id());
            seen.add(look(next, truth));
            standing = standing(seen);
        }
        double chance = standing.posterior()[truth];
        return new Outcome(
                seen.size(),
                1
                        + (int) Arrays.stream(standing.posterior())
                                .filter(p -> p > chance)
                                .count());
    }

    private Map<String, Evidence> left(Order order) {
        Set<String> stated = knowledge.weighing().models().stream()
                .flatMap(m -> m.traits().keySet().stream())
                .collect(Collectors.toSet());
        List<Evidence> shuffled =
                new ArrayList<>(knowledge.weighing().evidence().values());
        Collections.shuffle(shuffled, random);
        Map<String, Evidence> left = new LinkedHashMap<>();
        shuffled.stream()
                .filter(e -> order == Order.RANDOM_OF_ALL
                        || stated.contains(e.trait().id()))
                .forEach(e -> left.put(e.trait().id(), e));
        return left;
    }

    private Evidence next(Order order, Standing standing, Map<String, Evidence> left) {
        List<QuirkDoubt> doubts = order == Order.AS_OFFERED ? knowledge.doubts(standing) : List.of();
        return knowledge.nextLooks().offer(standing, doubts, true).safe().stream()
                .sorted(order == Order.AS_OFFERED ? Comparator.comparing(_ -> 0) : FOR_COST)
                .map(n -> left.get(n.trait()))
                .filter(Objects::nonNull)
                .findFirst()
                .orElseGet(() -> left.values().iterator().next());
    }

    private static final Comparator<NextLook> FOR_COST =
            Comparator.comparingDouble(n -> -n.gainBits() / n.cost().cost());

    private Standing standing(List<Seen> seen) {
        return knowledge.weighing().stand(new Case(seen, null, null, null, null, null, true), exponent);
    }

    private static double best(Standing standing) {
        return Arrays.stream(standing.posterior()).max().orElseThrow();
    }

    private Seen look(Evidence evidence, int truth) {
        String trait = evidence.trait().id();
        boolean slip = random.nextDouble() < wrong;
        return switch (evidence) {
            case ChoiceEvidence choice ->
                new Seen.OneOf(trait, List.of(choice.values().get(value(choice, truth, slip))));
            case MeasureEvidence measure -> new Seen.Measured(trait, reading(measure, truth, slip), 0);
            case PartsEvidence _ -> new Seen.CannotTell(trait);
        };
    }

    private int value(ChoiceEvidence choice, int truth, boolean slip) {
        double[] chances = new double[choice.values().size()];
        choice.chances(truth, 0, chances);
        int right = pick(wrong > 0 ? choice.weighed(truth, List.of(), null) : chances);
        return slip ? (right + 1 + random.nextInt(chances.length - 1)) % chances.length : right;
    }

    private double reading(MeasureEvidence measure, int truth, boolean slip) {
        Span span = Objects.requireNonNull(measure.trait().span());
        Normal own = measure.normal(truth, null);
        if (slip || own == null) {
            return span.low() + random.nextDouble() * (span.high() - span.low());
        }
        boolean missed = wrong == 0 && random.nextDouble() < measure.trait().miss();
        double gauge = Objects.requireNonNull(measure.trait().spread()) * (missed ? 6 : 1);
        return own.mean() + random.nextGaussian() * Math.hypot(own.sd(), gauge);
    }

    private int pick(double[] weights) {
        double at = random.nextDouble() * Arrays.stream(weights).sum();
        int i = 0;
        for (; i < weights.length - 1 && at >= weights[i]; i++) {
            at -= weights[i];
        }
        return i;
    }
}
