package hornbook.catalogue.entry;

import org.jspecify.annotations.Nullable;

/**
 * Wire diameter, or width and thickness of a strip, mm.
 *
 * @param diameter needle springs
 * @param width flat springs
 * @param thickness flat springs
 */
public record SpringSize(
        @Nullable Span diameter,
        @Nullable Span width,
        @Nullable Span thickness) {

    static SpringSize from(Fields in) {
        return new SpringSize(
                in.optional("diameter", Span::from),
                in.optional("width", Span::from),
                in.optional("thickness", Span::from));
    }
}
