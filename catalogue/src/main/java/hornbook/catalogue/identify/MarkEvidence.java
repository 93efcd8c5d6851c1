package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.MadeBy;
import hornbook.catalogue.entry.Make;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Seller;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What a name on the horn tells: a maker's own, or a seller's, who had it from one of several. */
final class MarkEvidence {
    private static final double DOUBT = 0.1;
    private static final double SLIP = 0.05;

    private final List<Model> models;
    private final Catalogue catalogue;

    MarkEvidence(List<Model> models, Catalogue catalogue) {
        this.models = models;
        this.catalogue = catalogue;
    }

    /**
     * Factor by which the name weighs each entry, unlisted last; all 1 where nobody knows the name.
     *
     * @param prior of each entry, unlisted last
     */
    double[] factors(String mark, double[] prior) {
        double[] sum = new double[models.size() + 1];
        double weights = 0;
        for (Known known : known(mark)) {
            double weight = Math.pow(SLIP, known.slips());
            weights += weight;
            double[] own = factors(known, prior);
            for (int e = 0; e < sum.length; e++) {
                sum[e] += weight * own[e];
            }
        }
        if (weights == 0) {
            Arrays.fill(sum, 1);
            return sum;
        }
        for (int e = 0; e < sum.length; e++) {
            sum[e] /= weights;
        }
        return sum;
    }

    /** Is there a maker or seller of about that name? */
    boolean knows(String mark) {
        return !known(mark).isEmpty();
    }

    private sealed interface Known {
        int slips();
    }

    private record Maker(Make make, int slips) implements Known {}

    private record Sold(Seller seller, int slips) implements Known {}

    private List<Known> known(String mark) {
        NameRead read = new NameRead(mark);
        List<Known> all = new ArrayList<>();
        for (Make make : catalogue.makes().values()) {
            List<String> names = new ArrayList<>(make.otherNames());
            names.add(make.title());
            names.stream()
                    .flatMapToInt(name -> read.slips(name).stream())
                    .min()
                    .ifPresent(slips -> all.add(new Maker(make, slips)));
        }
        for (Seller seller : catalogue.sellers().values()) {
            read.slips(seller.title()).ifPresent(slips -> all.add(new Sold(seller, slips)));
        }
        return all;
    }

    private double[] factors(Known known, double[] prior) {
        return switch (known) {
            case Maker maker -> inside(maker.make());
            case Sold sold -> sold(sold.seller(), prior);
        };
    }

    private double[] inside(Make make) {
        double[] factors = new double[models.size() + 1];
        Arrays.fill(factors, DOUBT);
        for (int e = 0; e < models.size(); e++) {
            if (models.get(e).make().equals(make.id())) {
                factors[e] = 1;
            }
        }
        return factors;
    }

    private double[] sold(Seller seller, double[] prior) {
        double[] share = new double[prior.length];
        for (MadeBy made : seller.madeBy()) {
            int[] covered = covered(made);
            double sum = Arrays.stream(covered).mapToDouble(e -> prior[e]).sum();
            for (int e : covered) {
                share[e] += made.weight() * prior[e] / sum;
            }
        }
        double[] factors = new double[prior.length];
        for (int e = 0; e < prior.length; e++) {
            factors[e] = (1 - DOUBT) * share[e] / prior[e] + DOUBT;
        }
        return factors;
    }

    private int[] covered(MadeBy made) {
        if (made.of().equals(MadeBy.UNLISTED)) {
            return new int[] {models.size()};
        }
        return java.util.stream.IntStream.range(0, models.size())
                .filter(e -> made.covers(models.get(e).id()))
                .toArray();
    }
}
