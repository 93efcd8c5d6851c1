/** Books and measures: what can be asked without knowing saxophones. */
@NullMarked
package hornbook.shared;

import org.jspecify.annotations.NullMarked;
