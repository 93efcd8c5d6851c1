package hornbook.catalogue.entry;

import java.util.Map;

/**
 * One end of a piece.
 *
 * @param loses what goes with it when it is cut off: dimension to what it then is, a number, a word or a dimension
 */
public record PieceEnd(Map<String, String> loses) {
    /** Keeps its own copy. */
    public PieceEnd {
        loses = Ordered.copy(loses);
    }

    static PieceEnd from(Fields in) {
        return new PieceEnd(in.textByName("loses"));
    }
}
