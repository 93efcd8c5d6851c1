package hornbook.viewer.hand;

import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.LotState;
import hornbook.shared.stock.LotLine;
import hornbook.shared.stock.LotSaid;
import hornbook.shared.stock.Piece;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Field;
import hornbook.viewer.ask.Field.Choice;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What a piece in hand is, as a person says it. */
public final class Described {
    private final Kinds kinds;
    private final Supplier<SizeReader> sizes;

    /** Knows which kind of thing a title speaks of. */
    public interface Kinds {
        /** Its id, empty where it is not known. */
        String of(String title);
    }

    public Described(Kinds kinds, Supplier<SizeReader> sizes) {
        this.kinds = kinds;
        this.sizes = sizes;
    }

    static List<Field> fields(String count, String pieces, LotState likely) {
        return List.of(
                Field.text("title", "What it is", ""),
                Field.number("count", count, pieces),
                Field.number("thread", "Thread, as 3-48", ""),
                Field.number("size", "Size, as length 12; head 3.9", ""),
                Field.choice(
                                "state",
                                "It is",
                                List.of(
                                        new Choice("new", "new"),
                                        new Choice("salvaged", "salvaged"),
                                        new Choice("blank", "stock to be worked")))
                        .holding(likely.name().toLowerCase(Locale.ROOT)));
    }

    /** What is written down of a lot that is there, to be put right. */
    static List<Field> again(LotLine lot) {
        return List.of(
                Field.text("title", "What it is", lot.title()),
                Field.text("kind", "Kind of part or supply", or(lot.kind())),
                Field.number("thread", "Thread, as 3-48", or(lot.thread())),
                Field.text("size", "Size, as length 12; head 3.9", lot.dimensions()),
                Field.text("supplier", "Where it is bought", or(lot.supplier())),
                Field.number("pack", "Sold together", lot.pack() == null ? "" : String.valueOf(lot.pack())));
    }

    private static String or(@Nullable String text) {
        return text == null ? "" : text;
    }

    /** @throws BadInput where a kind or a number cannot be used */
    LotSaid said(LotLine lot, Answers answers) {
        String pack = answers.text("pack");
        return new LotSaid(
                answers.text("title"),
                kind(lot, answers),
                answers.text("size").equals(lot.dimensions()) ? null : answers.text("size"),
                answers.text("thread"),
                null,
                null,
                answers.text("supplier"),
                pack.isEmpty() ? 0 : answers.whole("pack", "how many are sold together"),
                null);
    }

    /** A lot that had no kind takes the one that its new name says. */
    private @Nullable String kind(LotLine lot, Answers answers) {
        String told = answers.text("kind");
        if (told.equals(or(lot.kind()))) {
            return lot.kind() == null ? kinds.of(answers.text("title")) : null;
        }
        String known = kinds.of(told);
        if (known.isEmpty() && !told.isEmpty()) {
            throw new BadInput("“" + told
                    + "” is no kind of part or supply known here: write it as Find calls it, as pivot screw");
        }
        return known;
    }

    SizeReader sizes() {
        return sizes.get();
    }

    /** @throws hornbook.shared.shop.BadInput where title, size or thread cannot be used */
    Piece piece(Answers answers) {
        String title = answers.text("title");
        String state = answers.text("state");
        return Piece.said(
                title,
                kinds.of(title),
                answers.text("size"),
                answers.text("thread"),
                state.isEmpty() ? LotState.NEW : LotState.valueOf(state.toUpperCase(Locale.ROOT)),
                sizes.get());
    }
}
