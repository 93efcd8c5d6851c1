package hornbook.viewer.paper;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** Puts an outline on a page: curves stay curves, ends and joins are round, non-zero winding. */
final class Pencil {
    private static final int ROUND = 1;

    private Pencil() {}

    static void draw(PDPageContentStream on, Shape outline, Ink ink) throws IOException {
        Double line = ink.line();
        Double fill = ink.fill();
        if (fill != null) {
            on.setNonStrokingColor(fill.floatValue());
        }
        if (line != null) {
            on.setStrokingColor(line.floatValue());
            on.setLineWidth((float) ink.width());
            on.setLineCapStyle(ROUND);
            on.setLineJoinStyle(ROUND);
            on.setLineDashPattern(dash(ink), 0);
        }
        trace(on, outline);
        if (fill != null && line != null) {
            on.fillAndStroke();
        } else if (fill != null) {
            on.fill();
        } else {
            on.stroke();
        }
    }

    private static float[] dash(Ink ink) {
        float[] dash = new float[ink.dash().size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = ink.dash().get(i).floatValue();
        }
        return dash;
    }

    private static void trace(PDPageContentStream on, Shape outline) throws IOException {
        float[] to = new float[6];
        for (PathIterator at = outline.getPathIterator(null); !at.isDone(); at.next()) {
            switch (at.currentSegment(to)) {
                case PathIterator.SEG_MOVETO -> on.moveTo(to[0], to[1]);
                case PathIterator.SEG_LINETO -> on.lineTo(to[0], to[1]);
                case PathIterator.SEG_CUBICTO -> on.curveTo(to[0], to[1], to[2], to[3], to[4], to[5]);
                case PathIterator.SEG_CLOSE -> on.closePath();
                default -> throw new IllegalArgumentException("curves of the second order are raised beforehand");
            }
        }
    }
}
