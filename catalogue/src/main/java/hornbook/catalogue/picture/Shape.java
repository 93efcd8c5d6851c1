package hornbook.catalogue.picture;

/**
 * One shape of a picture.
 *
 * @param kind the SVG element it was written as
 * @param pen how it is drawn
 * @param id what it stands for, such as a pad cup; mostly empty
 * @param path its geometry as SVG path data in picture units, y downward, whatever the kind
 */
public record Shape(ShapeKind kind, Pen pen, String id, String path) {
    private static final double THOUSANDTH = 0.001;

    /** The path for whoever draws it himself: only absolute M L C Q A Z, letters and numbers parted by one space. */
    public String absolute() {
        return Outline.of(path, THOUSANDTH);
    }
}
