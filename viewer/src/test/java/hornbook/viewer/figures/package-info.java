/** Programs that measure, run by hand; their commands stand in DEVELOPERS.md. */
@NullMarked
package hornbook.viewer.figures;

import org.jspecify.annotations.NullMarked;
