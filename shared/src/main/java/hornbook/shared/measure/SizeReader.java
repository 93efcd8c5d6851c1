package hornbook.shared.measure;

import java.util.List;
import java.util.Map;

/**
 * Reads sizes as people write them. Every reading is total: a value, or one line that quotes the text and says what is
 * read. Signs from other keyboards (″ “ × − µ ½) are taken as the plain ones; a comma between digits is a decimal
 * comma; case does not matter.
 */
public final class SizeReader {
    private final LengthReader lengths;
    private final ThreadReader threads;
    private final NamedSizes named;
    private final SizeScanner scanner;

    SizeReader(StandardSizes tables) {
        named = new NamedSizes(tables.drills(), tables.gauges());
        lengths = new LengthReader(named);
        threads = new ThreadReader(tables.threads());
        scanner = new SizeScanner(lengths, named, threads);
    }

    /**
     * One size: {@code 2.5}, {@code 2,5 mm}, {@code .108"}, {@code 108 thou}, {@code 7/64"}, {@code 1-1/4 in},
     * {@code 25 µm}, {@code #40}, {@code F drill}, {@code no 47 drill}, {@code 18 AWG}, {@code music wire 18}, or our
     * own {@code 2.743 mm (.108 in)}.
     *
     * @param bare unit of a bare number; a bare fraction by 2, 4, 8 … 128 is inches whatever it says
     */
    public Reading<Length> length(String text, LengthUnit bare) {
        return lengths.single(text, bare);
    }

    /** A size with or without its doubt: also {@code 2.95±0.02 mm} (or +-, +/-) and {@code 2.72..2.74 mm}. */
    public Reading<Measured> measured(String text, LengthUnit bare) {
        return lengths.measured(text, bare);
    }

    /** A drill or gauge by name, with its source; refused if the text names neither. */
    public Reading<NamedSize> named(String text) {
        return named.read(Writing.plain(text))
                .orElseGet(() -> Reading.refused(text, "names no drill and no gauge: write #40 drill or AWG 18"));
    }

    /**
     * A thread: {@code M2.5}, {@code M2,5x0,45}, {@code 2.6x0.45}, {@code 3-48}, {@code 3/48 UNC}, {@code 6 BA},
     * {@code 1/8-40 BSW}, {@code S3}. Bare {@code M3} is the coarse pitch. Where a writing means several standards
     * (1/4-20: UNC or BSW) it is the first of {@link #threads}.
     */
    public Reading<Thread> thread(String text) {
        return threads(text).map(List::getFirst);
    }

    /** Every thread a writing may mean, at least one, in the order metric, Unified, BA, Whitworth, Loewenherz. */
    public Reading<List<Thread>> threads(String text) {
        return threads.meanings(text);
    }

    /** The dimensions of a stock record, {@code length=10.4 mm;nose=headed-tapered}, in the order written. */
    public Reading<Map<String, DimensionValue>> dimensions(String text) {
        return new DimensionsReader(lengths).all(text);
    }

    /**
     * Dimensions as they are said at the bench, in the form of {@link #dimensions}: {@code 12 mm} alone becomes
     * {@code size=12 mm}, {@code length 12; diameter 2.74 mm} gets its signs and its unit.
     */
    public Reading<String> asSaid(String text) {
        return new SizesAsSaid(new DimensionsReader(lengths)).written(text);
    }

    /** One value of such dimensions. */
    public Reading<DimensionValue> dimension(String text) {
        return new DimensionsReader(lengths).value(text);
    }

    /** The sizes and threads that stand in a free text (a query, a title, a label), in order. */
    public List<SizeMention> mentions(String text) {
        return scanner.scan(text);
    }
}
