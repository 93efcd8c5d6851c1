package hornbook.catalogue.spring;

import hornbook.shared.measure.Length;
import java.util.Optional;

/**
 * An old spring as measured, and what is thought of in its place.
 *
 * @param diameter of a needle spring's wire; a flat one has width and thickness instead
 * @param length free, from post face to cradle
 * @param toDiameter another wire, or another thickness of a flat spring
 * @param toLength another length
 * @param hole the post hole that the wire goes into
 * @param key words of the keys it serves: {@code low C}, {@code upper stack}
 * @param instrument id of the member of the family: {@code alto}
 */
public record SpringQuestion(
        Optional<Length> diameter,
        Optional<Length> width,
        Optional<Length> thickness,
        Length length,
        Optional<Length> toDiameter,
        Optional<Length> toLength,
        Optional<Length> hole,
        Optional<String> key,
        String instrument) {}
