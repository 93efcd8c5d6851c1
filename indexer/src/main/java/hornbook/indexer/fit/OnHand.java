package hornbook.indexer.fit;

import hornbook.shared.shop.Lot;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What the lots that suit a kind state of themselves. */
record OnHand(List<Lot> lots, Pieces pieces) {
    OnHand {
        lots = List.copyOf(lots);
    }

    Stream<Lot> suiting(Crafts crafts) {
        return lots.stream().filter(lot -> crafts.suits(lot.item()));
    }

    /** Names of dimensions. */
    List<String> names(Crafts crafts) {
        TreeSet<String> names = new TreeSet<>();
        suiting(crafts).forEach(lot -> names.addAll(Pieces.named(lot.dimensions())));
        return List.copyOf(names);
    }

    /** Sizes of one dimension, mm. */
    DoubleSummaryStatistics sizes(Crafts crafts, String dimension) {
        return suiting(crafts)
                .map(lot -> pieces.of(lot, crafts.of(lot.item())).value(dimension))
                .filter(Value.Amount.class::isInstance)
                .mapToDouble(value -> ((Value.Amount) value).mm())
                .summaryStatistics();
    }
}
