package hornbook.viewer.paper;

import java.util.List;

/** Pieces that stay together in one column. */
public record Block(List<Piece> pieces) implements Piece {
    private static final double BELOW = 2;

    public Block {
        pieces = List.copyOf(pieces);
    }

    @Override
    public double height(Sheet sheet, double width) {
        return pieces.stream().mapToDouble(piece -> piece.height(sheet, width)).sum() + BELOW;
    }

    @Override
    public void draw(Sheet sheet, double x, double y, double width) {
        double top = y;
        for (Piece piece : pieces) {
            piece.draw(sheet, x, top, width);
            top += piece.height(sheet, width);
        }
    }
}
