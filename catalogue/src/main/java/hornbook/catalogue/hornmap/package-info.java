/**
 * The question: what is known of this horn, cup by cup, and is what was read on it usual?
 *
 * <p>Here belong the map of a horn (pads, insides, openings, findings, what each key turns on), what is usual for a
 * reading, and what a horn's map can teach its model. Not here: the drawing of the horn (picture), writing readings down
 * (shared.job). The viewer asks.
 */
@NullMarked
package hornbook.catalogue.hornmap;

import org.jspecify.annotations.NullMarked;
