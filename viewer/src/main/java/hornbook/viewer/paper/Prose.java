package hornbook.viewer.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** Running words, some bold, some a box to tick, broken into lines. */
public final class Prose {
    private static final double BOX = 0.72 * Typeface.POINT;
    private static final double BOX_LINE = 0.22;
    private static final double BOX_WITH_GAP = 1.15 * Typeface.POINT;

    private final List<Word> words = new ArrayList<>();

    /** @param box a box to tick, which has no text */
    private record Word(String text, Face face, boolean box) {}

    private record Placed(Word word, double x) {}

    /** One line of it. */
    public record Line(List<Piece> pieces) {
        public record Piece(String text, Face face, boolean box, double x) {}

        public Line {
            pieces = List.copyOf(pieces);
        }

        /** Its foot line at y. */
        public void draw(Sheet sheet, double left, double y, double points) {
            for (Piece piece : pieces) {
                if (piece.box()) {
                    double side = BOX * points;
                    sheet.draw(Outlines.box(left + piece.x(), y - side, side, side), Ink.line(BOX_LINE, 0));
                } else {
                    sheet.text(piece.text(), piece.face(), left + piece.x(), y, points, 0);
                }
            }
        }
    }

    public Prose plain(String text) {
        return add(text, Face.PLAIN);
    }

    public Prose bold(String text) {
        return add(text, Face.BOLD);
    }

    /** A box that stays with the word after it. */
    public Prose tick() {
        words.add(new Word("", Face.PLAIN, true));
        return this;
    }

    private Prose add(String text, Face face) {
        for (String word : text.strip().split("\\s+")) {
            if (!word.isEmpty()) {
                words.add(new Word(word, face, false));
            }
        }
        return this;
    }

    public List<Line> lines(Sheet sheet, double points, double width) {
        return lines(sheet, points, _ -> width);
    }

    /** @param widths how wide each line may be, counted from 0 */
    public List<Line> lines(Sheet sheet, double points, IntToDoubleFunction widths) {
        List<Line> lines = new ArrayList<>();
        List<Placed> line = new ArrayList<>();
        double space = sheet.width("n", Face.PLAIN, points) / 2;
        double x = 0;
        for (int i = 0; i < words.size(); i++) {
            Word word = words.get(i);
            double wide = width(sheet, word, points);
            boolean tickLeftAlone = word.box()
                    && i + 1 < words.size()
                    && x + wide + width(sheet, words.get(i + 1), points) > widths.applyAsDouble(lines.size());
            if (!line.isEmpty() && (x + wide > widths.applyAsDouble(lines.size()) || tickLeftAlone)) {
                lines.add(joined(line));
                line.clear();
                x = 0;
            }
            for (String part : parts(sheet, word, points, widths.applyAsDouble(lines.size()))) {
                if (!line.isEmpty()
                        && x + sheet.width(part, word.face(), points) > widths.applyAsDouble(lines.size())) {
                    lines.add(joined(line));
                    line.clear();
                    x = 0;
                }
                Word printed = new Word(part, word.face(), word.box());
                line.add(new Placed(printed, x));
                x += width(sheet, printed, points) + (word.box() ? 0 : space);
            }
        }
        if (!line.isEmpty()) {
            lines.add(joined(line));
        }
        return lines;
    }

    private static double width(Sheet sheet, Word word, double points) {
        return word.box() ? BOX_WITH_GAP * points : sheet.width(word.text(), word.face(), points);
    }

    /** Only a word wider than a line is parted. */
    private static List<String> parts(Sheet sheet, Word word, double points, double width) {
        if (width(sheet, word, points) <= width) {
            return List.of(word.text());
        }
        return new Lines(width, text -> sheet.width(text, word.face(), points)).all(word.text());
    }

    /** Words of one face that follow one another become one text. */
    private static Line joined(List<Placed> placed) {
        List<Line.Piece> pieces = new ArrayList<>();
        for (Placed each : placed) {
            Word word = each.word();
            Line.Piece last = pieces.isEmpty() ? null : pieces.getLast();
            if (last != null && !last.box() && !word.box() && last.face() == word.face()) {
                pieces.set(
                        pieces.size() - 1,
                        new Line.Piece(last.text() + " " + word.text(), last.face(), false, last.x()));
            } else {
                pieces.add(new Line.Piece(word.text(), word.face(), word.box(), each.x()));
            }
        }
        return new Line(pieces);
    }
}
