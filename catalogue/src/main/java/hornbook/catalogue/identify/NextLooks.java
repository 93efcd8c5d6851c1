package hornbook.catalogue.identify;

import hornbook.catalogue.entry.CautionLevel;
import hornbook.catalogue.entry.Marking;
import hornbook.catalogue.entry.Trait;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Orders the looks still to be taken: by worth, but none that takes a part off or marks the horn while a lesser one
 * still tells something, or guards against a stop that is open.
 */
final class NextLooks {
    private static final double STILL_TELLS = 0.05;
    private static final double NOTHING = 0.0005;
    private static final double GUARDS = 0.001;

    private final List<Evidence> evidence;
    private final LookMatrix matrix;

    NextLooks(Weighing weighing) {
        this.evidence = List.copyOf(weighing.evidence().values());
        this.matrix = LookMatrix.of(evidence, weighing.models().size() + 1);
    }

    /** How much harm a look can do: what is under it goes first. */
    private enum Harm {
        NONE,
        MARK,
        KEY_OFF,
        PAD_OFF
    }

    private record Weighed(Trait trait, double gain, double inAll, List<QuirkDoubt> guards, Harm harm) {
        double worth() {
            return inAll / trait.cost().cost();
        }

        boolean guardsStop() {
            return guards.stream().anyMatch(g -> g.quirk().caution() == CautionLevel.STOP);
        }

        NextLook look(@Nullable String marks) {
            return new NextLook(
                    trait.id(),
                    trait.question(),
                    gain,
                    worth(),
                    trait.cost(),
                    trait.look(),
                    guards.stream().map(g -> g.quirk().id()).toList(),
                    marks);
        }
    }

    /**
     * Looks to take.
     *
     * @param safe what can be offered now, best first
     * @param marking ways of looking that leave a mark, for which the owner is asked first
     */
    record Offer(List<NextLook> safe, List<NextLook> marking) {}

    Offer offer(Standing standing, List<QuirkDoubt> quirks, boolean consent) {
        List<Weighed> all = weighed(standing, quirks);
        List<NextLook> marking = all.stream()
                .filter(w -> w.trait().marking() != null)
                .sorted(order(Harm.NONE))
                .map(w -> w.look(way(w.trait())))
                .toList();
        return new Offer(safe(all, consent), marking);
    }

    private static List<NextLook> safe(List<Weighed> all, boolean consent) {
        List<NextLook> next = new ArrayList<>();
        for (Harm harm : Harm.values()) {
            if ((harm != Harm.MARK || consent) && allowed(harm, all)) {
                all.stream()
                        .filter(w -> w.harm() == harm)
                        .sorted(order(harm))
                        .map(w -> w.look(harm == Harm.MARK ? way(w.trait()) : null))
                        .forEach(next::add);
            }
        }
        return next;
    }

    private static Comparator<Weighed> order(Harm harm) {
        Comparator<Weighed> byWorth = Comparator.comparingDouble(Weighed::worth).reversed();
        return harm == Harm.NONE
                ? byWorth
                : Comparator.comparing(Weighed::guardsStop).reversed().thenComparing(byWorth);
    }

    private static boolean allowed(Harm harm, List<Weighed> all) {
        return all.stream()
                .filter(w -> w.harm().compareTo(harm) < 0 && w.harm() != Harm.MARK)
                .noneMatch(w -> w.guardsStop() || harm != Harm.MARK && w.inAll() > STILL_TELLS);
    }

    private static @Nullable String way(Trait trait) {
        Marking marking = trait.marking();
        return marking == null ? null : marking.way();
    }

    private static Harm harm(Trait trait) {
        Marking marking = trait.marking();
        return switch (trait.cost()) {
            case PAD_OFF -> Harm.PAD_OFF;
            case KEY_OFF -> Harm.KEY_OFF;
            default -> marking != null && marking.onlyWay() ? Harm.MARK : Harm.NONE;
        };
    }

    private List<Weighed> weighed(Standing standing, List<QuirkDoubt> quirks) {
        List<QuirkDoubt> open = quirks.stream().filter(QuirkDoubt::open).toList();
        double[] sums = matrix.product(standing.posterior());
        double[] gains = matrix.gainsOf(sums);
        double most = Scales.entropy(standing.posterior());
        QuirkFalls falls = new QuirkFalls(matrix, standing, sums, open);
        List<Weighed> all = new ArrayList<>();
        int question = 0;
        for (Evidence one : evidence) {
            int first = question;
            question += one.outcomes().length;
            if (!standing.asked().contains(one.trait().id())) {
                double gain = 0;
                for (int q = first; q < question; q++) {
                    gain += gains[q];
                }
                all.add(weighed(
                        one.trait(),
                        Math.min(most, gain),
                        falls.bits(one.trait().id(), first, question),
                        open));
            }
        }
        all.removeIf(w -> w.inAll() < NOTHING);
        return all;
    }

    private static Weighed weighed(Trait trait, double gain, double quirkBits, List<QuirkDoubt> open) {
        List<QuirkDoubt> guards = open.stream()
                .filter(q -> q.falls().getOrDefault(trait.id(), 0.0) > GUARDS)
                .sorted(Comparator.comparing((QuirkDoubt q) -> q.quirk().caution())
                        .thenComparing(q -> -q.probability())
                        .thenComparing(q -> q.quirk().id()))
                .toList();
        return new Weighed(trait, gain, gain + quirkBits, guards, harm(trait));
    }
}
