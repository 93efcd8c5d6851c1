/**
 * Sizes as a repairer writes them: lengths, drills, wire and sheet gauges, pad sizes and screw threads, with the
 * standard tables they come from.
 *
 * <p>Here belong exact values, the reading of what people write (total: a value or one clear reason, never an
 * exception), and the published tables with the source and sureness of each row. What a size means for a horn, a part
 * or a job does not belong here, nor any reckoning of likelihood.
 *
 * <p>Begin with {@link hornbook.shared.measure.StandardSizes#load()}, once at start, and hand its
 * {@link hornbook.shared.measure.SizeReader} to whoever reads sizes. Everyone may call this package; it calls none of
 * ours.
 */
@NullMarked
package hornbook.shared.measure;

import org.jspecify.annotations.NullMarked;
