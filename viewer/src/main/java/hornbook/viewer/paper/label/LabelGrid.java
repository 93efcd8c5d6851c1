package hornbook.viewer.paper.label;

import hornbook.shared.shop.BadInput;
import hornbook.viewer.paper.PaperSize;
import java.awt.geom.Rectangle2D;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sheet of label cells of one size, side by side, in the middle of the page. Cells count from 1, along the rows.
 *
 * @param width of a cell, mm
 * @param height of a cell, mm
 */
public record LabelGrid(PaperSize paper, double width, double height) {
    /** Smaller ones leave no room for a code that a reader can make out. */
    public static final double LEAST_WIDTH = 40;

    public static final double LEAST_HEIGHT = 20;

    private static final Pattern CELL =
            Pattern.compile("(\\d{1,3}(?:\\.\\d{1,3})?)\\s*[xX×]\\s*(\\d{1,3}(?:\\.\\d{1,3})?)");
    private static final double HAIR = 1e-6;

    /** @throws BadInput for cells too small to read or larger than the paper */
    public LabelGrid {
        if (width < LEAST_WIDTH || height < LEAST_HEIGHT || width > paper.width() || height > paper.height()) {
            throw new BadInput("a label of " + width + " x " + height + " mm cannot be printed: write one from 40x20 up"
                    + " to the paper, " + paper.width() + " x " + paper.height());
        }
    }

    /** Cells written as {@code 70x37}, in millimetres. @throws BadInput where it is not written so */
    public static LabelGrid of(PaperSize paper, String cell) {
        Matcher sides = CELL.matcher(cell.strip());
        if (!sides.matches()) {
            throw new BadInput("label size " + cell + " is not understood: write width x height in mm, as in 70x37");
        }
        return new LabelGrid(paper, Double.parseDouble(sides.group(1)), Double.parseDouble(sides.group(2)));
    }

    public int columns() {
        return (int) (paper.width() / width + HAIR);
    }

    public int rows() {
        return (int) (paper.height() / height + HAIR);
    }

    public int cells() {
        return columns() * rows();
    }

    /** Where a cell lies on the page, mm. @throws BadInput where the sheet has no such cell */
    public Rectangle2D cell(int number) {
        if (number < 1 || number > cells()) {
            throw new BadInput("this sheet has no cell " + number + ": it has " + cells() + ", counted along the rows; "
                    + "name one from 1 to " + cells());
        }
        double left = (paper.width() - columns() * width) / 2;
        double top = (paper.height() - rows() * height) / 2;
        int column = (number - 1) % columns();
        int row = (number - 1) / columns();
        return new Rectangle2D.Double(left + column * width, top + row * height, width, height);
    }
}
