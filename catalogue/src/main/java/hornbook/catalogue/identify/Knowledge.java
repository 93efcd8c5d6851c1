package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Quirk;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All that a question is weighed against, made ready once: with what was learned, or without. */
final class Knowledge {
    private final Weighing weighing;
    private final double exponent;
    private final NextLooks nextLooks;
    private final Map<Quirk, Applies> quirks = new LinkedHashMap<>();

    private Knowledge(Weighing weighing, double exponent) {
        this.weighing = weighing;
        this.exponent = exponent;
        this.nextLooks = new NextLooks(weighing);
        weighing.catalogue().quirks().values().forEach(q -> quirks.put(q, new Applies(q.when(), weighing.evidence())));
    }

    /** As stated by the entries, each look counting in full. */
    static Knowledge plain(Catalogue catalogue, Experience experience) {
        return new Knowledge(new Weighing(catalogue, experience, false), 1);
    }

    /** With what sure horns taught, and looks counting as far as the confirmed ones say they should. */
    static Knowledge learned(Catalogue catalogue, Experience experience) {
        Weighing weighing = new Weighing(catalogue, experience, true);
        return new Knowledge(weighing, new ExponentFit(weighing, experience).best());
    }

    Weighing weighing() {
        return weighing;
    }

    Standing stand(Case horn) {
        return weighing.stand(horn, exponent);
    }

    List<QuirkDoubt> doubts(Standing standing) {
        return quirks.entrySet().stream()
                .map(q -> QuirkDoubt.of(q.getKey(), q.getValue(), standing))
                .toList();
    }

    NextLooks nextLooks() {
        return nextLooks;
    }

    /** Ids of traits that a quirk turns on and that were not looked at. */
    List<String> open(Quirk quirk, Standing standing) {
        Applies applies = quirks.get(quirk);
        return applies == null
                ? List.of()
                : applies.variables().stream()
                        .map(Variable::trait)
                        .distinct()
                        .filter(t -> !standing.asked().contains(t))
                        .toList();
    }
}
