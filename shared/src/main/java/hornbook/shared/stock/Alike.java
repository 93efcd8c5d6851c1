package hornbook.shared.stock;

import hornbook.shared.measure.DimensionValue;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.Lot;
import hornbook.shared.store.Books;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Answers where pieces like one in hand already lie: the nearest in thread and size first. */
public final class Alike {
    private static final int MOST = 5;

    private static final int UNLIKE = 1000;

    /** Of what differs in a word, as the shape of a nose, mm. */
    private static final double OTHER_WORD = 3;

    private final Books books;
    private final Stock stock;
    private final SizeReader sizes;

    public Alike(Books books, SizeReader sizes) {
        this.books = books;
        this.stock = new Stock(books);
        this.sizes = sizes;
    }

    /** Lots of the piece's kind, or of its title where the kind is not known; keepsakes and unsorted ones left out. */
    public List<LotCard> to(Piece piece) {
        record Near(Lot lot, double far) {}
        return books.all(Lot.class).stream()
                .filter(lot -> !lot.keepsake() && !lot.reserve() && !lot.notYetKnown() && sameKind(lot, piece))
                .map(lot -> new Near(lot, far(lot, piece)))
                .filter(near -> near.far() < UNLIKE)
                .sorted(Comparator.comparingDouble(Near::far)
                        .thenComparing(near -> near.lot().id()))
                .limit(MOST)
                .flatMap(near -> stock.lot(near.lot().id()).stream())
                .toList();
    }

    private static boolean sameKind(Lot lot, Piece piece) {
        return piece.kind().isEmpty()
                ? folded(lot.title()).startsWith(folded(piece.title()))
                : lot.item().equals(piece.kind());
    }

    /** Lots with another thread are not like it, however near in size. */
    private double far(Lot lot, Piece piece) {
        if (piece.thread() != null && !sameThread(lot, piece.thread())) {
            return UNLIKE;
        }
        Map<String, DimensionValue> there = read(lot.dimensions());
        return read(piece.dimensions()).entrySet().stream()
                .mapToDouble(mine -> far(mine.getValue(), there.get(mine.getKey())))
                .sum();
    }

    private boolean sameThread(Lot lot, String thread) {
        String other = lot.thread();
        return other != null
                && sizes.thread(other).found().equals(sizes.thread(thread).found());
    }

    private Map<String, DimensionValue> read(String dimensions) {
        return sizes.dimensions(dimensions).found().orElse(Map.of());
    }

    private static double far(DimensionValue mine, @Nullable DimensionValue other) {
        if (mine instanceof DimensionValue.Size(var a) && other instanceof DimensionValue.Size(var b)) {
            return Math.abs(a.nominal().mm() - b.nominal().mm());
        }
        return Objects.equals(mine, other) ? 0 : OTHER_WORD;
    }

    private static String folded(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }
}
