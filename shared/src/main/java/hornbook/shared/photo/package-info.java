/**
 * Photos of horns and jobs: kept by the SHA-256 of their content, without what the camera wrote about place, time and
 * owner.
 *
 * <p>Here belongs how a picture is taken in and found again. What it shows stands in the books (shop's Photo). Pictures
 * come from anywhere: nothing in a file is believed. Jobs, horns, exchange and screens may call this.
 */
@NullMarked
package hornbook.shared.photo;

import org.jspecify.annotations.NullMarked;
