package hornbook.viewer.knowledge;

import hornbook.catalogue.entry.Provenance;
import hornbook.viewer.card.Card;

/**
 * The entry that lies open.
 *
 * @param told where it is known from and how sure it is
 * @param own whether it is the shop's own
 * @param shipped whether a shipped one holds, or would hold again
 */
record Opened(Card card, Provenance told, boolean own, boolean shipped) {
    String id() {
        return card.id();
    }
}
