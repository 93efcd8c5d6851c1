/**
 * The shop's own knowledge as exchange files: makes, sellers, models with their key maps and order of taking down, and
 * how looks go wrong.
 *
 * <p>Here belong how a row becomes a part of an entry and back, byte for byte. Not here: the books' files (shared
 * exchange), what an entry means.
 */
@NullMarked
package hornbook.catalogue.exchange;

import org.jspecify.annotations.NullMarked;
