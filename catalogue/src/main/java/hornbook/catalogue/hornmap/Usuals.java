package hornbook.catalogue.hornmap;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Cup;
import hornbook.catalogue.entry.MeasureTaken;
import hornbook.catalogue.entry.Span;
import hornbook.catalogue.entry.Usual;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Says what is usual for a reading. An outlier raises one question and never bars writing it down. */
public final class Usuals {
    /** The opening of a cup at its front: its usual range stands with the cup. */
    public static final String HEIGHT = "finding-key-height";

    /** The inside diameter of a cup: usual is what its usual pads fit. */
    public static final String INSIDE = "finding-cup-id";

    private final Catalogue catalogue;

    public Usuals(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Everything that can be found, with what is usual on an instrument; in the order of the catalogue. */
    public List<Usualness> all(String instrument) {
        return catalogue.all(MeasureTaken.class).keySet().stream()
                .flatMap(what -> of(what, instrument, "", null).stream())
                .toList();
    }

    /**
     * What is usual for a reading.
     *
     * @param where id of the cup; empty for the whole horn
     * @param value as written, in its own unit; what is no number is not judged
     * @return empty where {@code what} is no kind of reading
     */
    public Optional<Usualness> read(String what, String instrument, String where, String value) {
        Double number = value.matches("-?\\d+([.,]\\d+)?") ? Double.valueOf(value.replace(',', '.')) : null;
        return of(what, instrument, where, number);
    }

    /** As {@link #read}, of a number; null before it is read. */
    public Optional<Usualness> of(String what, String instrument, String where, @Nullable Double value) {
        return Optional.ofNullable(catalogue.all(MeasureTaken.class).get(what))
                .map(taken -> of(taken, instrument, where, value));
    }

    private Usualness of(MeasureTaken taken, String instrument, String where, @Nullable Double value) {
        Optional<Span> span = span(taken, instrument, where);
        Usual usual = taken.usual().get(instrument);
        boolean outside =
                value != null && span.filter(range -> !range.holds(value)).isPresent();
        String text = atCup(taken) ? "" : usual == null || usual.text().equals("-") ? "" : usual.text();
        return new Usualness(
                taken.id(),
                taken.title(),
                taken.unit() == null ? "" : taken.unit(),
                atCup(taken) ? span.map(Usuals::written).orElse("") : text,
                taken.how(),
                taken.consent(),
                outside,
                outside ? taken.outlierMeans() : null);
    }

    private static boolean atCup(MeasureTaken taken) {
        return taken.id().equals(HEIGHT) || taken.id().equals(INSIDE);
    }

    private Optional<Span> span(MeasureTaken taken, String instrument, String where) {
        if (atCup(taken)) {
            return Optional.ofNullable(catalogue.cups().get(where))
                    .flatMap(cup -> taken.id().equals(HEIGHT) ? height(cup, instrument) : pad(cup, instrument));
        }
        Usual usual = taken.usual().get(instrument);
        return usual == null || usual.low() == null || usual.high() == null
                ? Optional.empty()
                : Optional.of(new Span(usual.low(), usual.high()));
    }

    static Optional<Span> height(Cup cup, String instrument) {
        return Optional.ofNullable(cup.heights().get(instrument));
    }

    static Optional<Span> pad(Cup cup, String instrument) {
        return Optional.ofNullable(cup.pads().get(instrument)).map(range -> new Span(range.low(), range.high()));
    }

    static String written(Span span) {
        return plain(span.low()) + "-" + plain(span.high());
    }

    static String plain(double mm) {
        return java.math.BigDecimal.valueOf(mm).stripTrailingZeros().toPlainString();
    }
}
