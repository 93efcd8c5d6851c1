package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Model;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Weighs a question against all entries, with what was learned, or without. */
final class Weighing {
    private final Catalogue catalogue;
    private final Experience experience;
    private final List<Model> models;
    private final Map<String, Evidence> evidence;
    private final SerialEvidence serials;
    private final MarkEvidence marks;

    /** @param learn whether the horns of the books teach; they count in the prior either way */
    Weighing(Catalogue catalogue, Experience experience, boolean learn) {
        EvidenceBuilder builder = new EvidenceBuilder(catalogue, learn ? experience : Experience.NONE);
        this.catalogue = catalogue;
        this.experience = experience;
        this.models = builder.models();
        this.evidence = builder.build();
        this.serials = new SerialEvidence(models);
        this.marks = new MarkEvidence(models, catalogue);
    }

    Catalogue catalogue() {
        return catalogue;
    }

    Map<String, Evidence> evidence() {
        return evidence;
    }

    List<Model> models() {
        return models;
    }

    Standing stand(Case horn, double exponent) {
        double[] prior = Prior.of(models, experience, entryOf(horn.model()));
        Map<String, List<Seen>> looks = answered(horn.seen());
        List<Piece> pieces = new ArrayList<>();
        looks.forEach((trait, answers) -> {
            Evidence weigh = evidence.get(trait);
            if (weigh != null) {
                pieces.add(piece(weigh, answers, exponent, horn.except()));
            }
        });
        serial(horn, pieces);
        mark(horn, prior, pieces);
        taken(horn, pieces);
        List<String> asked = horn.seen().stream().map(Seen::trait).distinct().toList();
        double[] posterior = Scales.posterior(prior, pieces);
        return new Standing(models, evidence, looks, asked, pieces, prior, posterior, exponent, horn.except());
    }

    private void serial(Case horn, List<Piece> pieces) {
        if (horn.serial() != null && horn.serial().told()) {
            double[] chances = serials.likelihoods(horn.serial(), horn.plain());
            pieces.add(new Piece("serial", null, logs(chances, 1)));
        }
    }

    private void mark(Case horn, double[] prior, List<Piece> pieces) {
        if (horn.mark() != null && marks.knows(horn.mark())) {
            pieces.add(new Piece("mark", null, logs(marks.factors(horn.mark(), prior), 1)));
        }
    }

    private void taken(Case horn, List<Piece> pieces) {
        if (horn.taken() != null) {
            double[] chances = new double[models.size() + 1];
            chances[entryOf(horn.taken())] = 1;
            pieces.add(new Piece("model", null, logs(chances, 1)));
        }
    }

    boolean knowsMark(String mark) {
        return marks.knows(mark);
    }

    private int entryOf(@Nullable String model) {
        for (int e = 0; e < models.size(); e++) {
            if (models.get(e).id().equals(model)) {
                return e;
            }
        }
        return -1;
    }

    /** Answers by trait, each trait's in one order, so that the order of asking changes nothing. */
    private static Map<String, List<Seen>> answered(List<Seen> seen) {
        Map<String, List<Seen>> looks = new TreeMap<>();
        seen.stream()
                .filter(s -> !(s instanceof Seen.CannotTell))
                .sorted(java.util.Comparator.comparing(Seen::written))
                .forEach(s -> Objects.requireNonNull(looks.computeIfAbsent(s.trait(), _ -> new ArrayList<>()))
                        .add(s));
        return looks;
    }

    private Piece piece(Evidence weigh, List<Seen> answers, double exponent, @Nullable String except) {
        double[] chances = new double[models.size() + 1];
        for (int e = 0; e < chances.length; e++) {
            chances[e] = weigh.likelihood(e, answers, except);
        }
        String written = String.join(", ", answers.stream().map(Seen::written).toList());
        return new Piece(written, weigh.trait().id(), logs(chances, exponent));
    }

    private static double[] logs(double[] chances, double exponent) {
        double[] logs = new double[chances.length];
        for (int e = 0; e < logs.length; e++) {
            logs[e] = exponent * Math.log(Math.max(chances[e], Double.MIN_NORMAL));
        }
        return logs;
    }
}
