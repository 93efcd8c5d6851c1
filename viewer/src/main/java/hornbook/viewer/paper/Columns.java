package hornbook.viewer.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * Pieces one under the other in columns side by side, over pages. A piece is never parted; one that leads stays with
 * what follows it. Lengths in millimetres.
 *
 * @param count columns side by side
 * @param top how far down the columns of the first page begin
 */
public record Columns(PaperSize paper, int count, double top) {
    public static final double MARGIN = 10;
    private static final double BETWEEN = 5;
    private static final double FOOT = 7;

    /** Where a piece stands; page and column from 0. */
    public record Spot(Piece piece, int page, int column, double y) {}

    public double width() {
        return (paper.width() - 2 * MARGIN - (count - 1) * BETWEEN) / count;
    }

    public double left(int column) {
        return MARGIN + column * (width() + BETWEEN);
    }

    /** The lowest edge of the text. */
    public double bottom() {
        return paper.height() - MARGIN - FOOT;
    }

    private double begins(int column) {
        return column < count ? top : MARGIN;
    }

    /** Where all of them stand; nothing is drawn. */
    public List<Spot> place(Sheet sheet, List<? extends Piece> pieces) {
        List<Double> heights =
                pieces.stream().map(piece -> piece.height(sheet, width())).toList();
        List<Spot> spots = new ArrayList<>();
        int column = 0;
        double y = begins(0);
        for (int i = 0; i < pieces.size(); i++) {
            if (y + needed(pieces, heights, i) > bottom() && y > begins(column)) {
                column++;
                y = begins(column);
            }
            spots.add(new Spot(pieces.get(i), column / count, column % count, y));
            y += heights.get(i);
        }
        return spots;
    }

    /** The piece and, where it leads, what must follow it. */
    private static double needed(List<? extends Piece> pieces, List<Double> heights, int from) {
        double height = 0;
        for (int i = from; i < pieces.size(); i++) {
            height += heights.get(i);
            if (!pieces.get(i).leads()) {
                break;
            }
        }
        return height;
    }

    public void draw(Sheet sheet, Spot spot) {
        spot.piece().draw(sheet, left(spot.column()), spot.y(), width());
    }
}
