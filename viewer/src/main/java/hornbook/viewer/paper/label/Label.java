package hornbook.viewer.paper.label;

import hornbook.shared.stock.DrawerCard;

/**
 * What stands on the label of a drawer or place. Of its notes and its lots nothing: a customer may be named there.
 *
 * @param id its number
 * @param heading large: what is written on it, else what is in it, else where it is
 * @param contents what is in it, in short; may be empty
 * @param where the furniture and the spot in it
 */
public record Label(String id, String heading, String contents, String where) {

    /** The label of a drawer as it is now. */
    public static Label of(DrawerCard card) {
        if (!card.label().isBlank()) {
            return new Label(card.id(), card.label(), card.contents(), card.where());
        }
        String heading = card.contents().isBlank() ? card.where() : card.contents();
        return new Label(card.id(), heading, "", card.where());
    }

    /** What its code says to a reader: our own scheme and the number. */
    public String code() {
        return "hornbook:" + id;
    }
}
