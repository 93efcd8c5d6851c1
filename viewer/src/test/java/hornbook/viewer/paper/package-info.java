/** Tries what is printed: pages are rendered again and measured, codes read again. */
@NullMarked
package hornbook.viewer.paper;

import org.jspecify.annotations.NullMarked;
