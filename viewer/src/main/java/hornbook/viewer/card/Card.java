package hornbook.viewer.card;

import java.util.List;

/**
 * An opened record, to be read from top to bottom.
 *
 * @param kind its kind, one word
 * @param id its number
 * @param title what a person calls it
 * @param blocks what it says
 */
public record Card(String kind, String id, String title, List<Block> blocks) {
    public Card {
        blocks = List.copyOf(blocks);
    }
}
