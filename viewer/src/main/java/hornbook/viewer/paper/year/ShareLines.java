package hornbook.viewer.paper.year;

import hornbook.viewer.paper.Face;
import hornbook.viewer.paper.Ink;
import hornbook.viewer.paper.Outlines;
import hornbook.viewer.paper.Piece;
import hornbook.viewer.paper.Sheet;
import hornbook.viewer.paper.Typeface;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Two shares as time goes by, each about the dashed line where it ought to lie.
 *
 * @param first shares from 0 to 1, in order of time
 * @param second as many
 * @param firstHonest where the first ought to lie
 * @param labels one for each, under the plot
 */
record ShareLines(
        List<Double> first,
        List<Double> second,
        double firstHonest,
        double secondHonest,
        String firstName,
        String secondName,
        List<String> labels,
        double tall)
        implements Piece {
    private static final double POINTS = 6.5;
    private static final double LINE = 1.25 * POINTS * Typeface.POINT;
    private static final double BELOW = 2;
    private static final double SCALE = 8;
    private static final double NAMES = 12;
    private static final double EDGE = 0.25;
    private static final double THICK = 0.5;
    private static final double DOT = 0.8;

    ShareLines {
        first = List.copyOf(first);
        second = List.copyOf(second);
        labels = List.copyOf(labels);
    }

    @Override
    public double height(Sheet sheet, double width) {
        return tall + 2 * LINE + BELOW;
    }

    @Override
    public void draw(Sheet sheet, double x, double y, double width) {
        double foot = y + LINE + tall;
        double left = x + SCALE;
        double wide = width - SCALE - NAMES;
        for (int share = 0; share <= 100; share += 25) {
            double at = foot - tall * share / 100;
            sheet.line(left - 1, at, left, at, EDGE);
            String number = share + "";
            sheet.text(number, Face.PLAIN, left - 1.5 - sheet.width(number, Face.PLAIN, POINTS), at + 0.8, POINTS, 0);
        }
        sheet.line(left, foot, left + wide, foot, EDGE);
        sheet.line(left, foot, left, foot - tall, EDGE);
        honest(sheet, left, wide, foot - tall * firstHonest);
        honest(sheet, left, wide, foot - tall * secondHonest);
        curve(sheet, first, firstName, left, wide, foot);
        curve(sheet, second, secondName, left, wide, foot);
        for (int i = 0; i < labels.size(); i++) {
            String label = labels.get(i);
            double middle = left + wide * (i + 0.5) / labels.size();
            sheet.text(label, Face.PLAIN, middle - sheet.width(label, Face.PLAIN, POINTS) / 2, foot + LINE, POINTS, 0);
        }
    }

    private static void honest(Sheet sheet, double left, double wide, double at) {
        Path2D.Double line = new Path2D.Double();
        line.moveTo(left, at);
        line.lineTo(left + wide, at);
        sheet.draw(line, new Ink(EDGE, 0.4, null, List.of(1.2, 1.2)));
    }

    private void curve(Sheet sheet, List<Double> shares, String name, double left, double wide, double foot) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            points.add(new double[] {left + wide * (i + 0.5) / shares.size(), foot - tall * shares.get(i)});
        }
        for (int i = 1; i < points.size(); i++) {
            sheet.line(points.get(i - 1)[0], points.get(i - 1)[1], points.get(i)[0], points.get(i)[1], THICK);
        }
        points.forEach(p -> sheet.draw(Outlines.box(p[0] - DOT / 2, p[1] - DOT / 2, DOT, DOT), Ink.area(0)));
        if (!points.isEmpty()) {
            sheet.text(name, Face.PLAIN, left + wide + 1, points.getLast()[1] + 0.8, POINTS, 0);
        }
    }
}
