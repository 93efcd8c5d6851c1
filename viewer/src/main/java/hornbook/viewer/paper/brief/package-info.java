/**
 * The brief on paper: what bites, what to fetch, how the last one went, on two pages at most.
 *
 * <p>Here belong the order of its parts and what is left out where the sheet is full. Not here: what bites (the brief itself). Commands and screens may call it.
 */
@NullMarked
package hornbook.viewer.paper.brief;

import org.jspecify.annotations.NullMarked;
