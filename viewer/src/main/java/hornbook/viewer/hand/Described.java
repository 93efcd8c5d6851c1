package hornbook.viewer.hand;

import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.LotState;
import hornbook.shared.stock.Piece;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Field;
import hornbook.viewer.ask.Field.Choice;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

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
