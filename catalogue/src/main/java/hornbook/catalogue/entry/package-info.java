/**
 * The trade's knowledge as entries: one immutable record a kind, how it is read, checked and written.
 *
 * <p>Here belong the kinds of entry, the conditions of quirks, the schema check and the {@link
 * hornbook.catalogue.entry.Catalogue} that holds shipped entries and the shop's own. Not here: questions
 * put to the entries (one package each), drawers and lots, the index. Every package above may read
 * entries; only import and editing write them.
 */
@NullMarked
package hornbook.catalogue.entry;

import org.jspecify.annotations.NullMarked;
