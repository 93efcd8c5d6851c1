package hornbook.viewer.paper.owner;

import hornbook.viewer.paper.Face;
import hornbook.viewer.paper.Headline;
import hornbook.viewer.paper.Item;
import hornbook.viewer.paper.Item.Mark;
import hornbook.viewer.paper.Piece;
import hornbook.viewer.paper.Prose;
import hornbook.viewer.paper.Sheet;
import hornbook.viewer.paper.Typeface;
import java.util.ArrayList;
import java.util.List;

/** The pieces of a sheet that is read, ticked and signed by two people. */
final class Form {
    static final double POINTS = 9.5;

    private static final double TITLE = 17;
    private static final double HEADING = 12;
    private static final List<String> CAREFUL = List.of(
            "Finish may mark at heat and at old acid; a look that leaves a mark is agreed first.",
            "Thin or pitted metal may crack, and brittle springs may break when they are unhooked.",
            "The maker of a horn sold under another name, the year by a serial number and an alloy are opinions;"
                    + " a year is given as a span.",
            "The tuning of a high-pitch horn cannot be changed. Moulded bodies and cast keys are worked on at the"
                    + " owner's risk.",
            "Leather and felt settle. Mouthpiece and reed are part of how a horn plays.",
            "None of this lifts a duty of care, nor the law that protects buyers.");

    private final List<Piece> pieces = new ArrayList<>();

    Form title(String text) {
        pieces.add(new Headline(text, TITLE));
        return this;
    }

    Form heading(String text) {
        pieces.add(new Headline(text, HEADING));
        return this;
    }

    /** A paragraph; nothing where there are no words. */
    Form say(String text) {
        return text.isBlank() ? this : add(new Prose().plain(text), Mark.NONE);
    }

    Form strong(String text) {
        return add(new Prose().bold(text), Mark.STOP);
    }

    Form named(String name, String text) {
        return text.isBlank() ? this : add(new Prose().bold(name + ":").plain(text), Mark.NONE);
    }

    Form points(List<String> texts) {
        texts.forEach(text -> add(new Prose().plain(text), Mark.POINT));
        return this;
    }

    /** A line with boxes before it, each with its word. */
    Form boxes(List<String> words, String text) {
        Prose prose = new Prose();
        words.forEach(word -> prose.tick().plain(word));
        return add(prose.plain(text), Mark.NONE);
    }

    Form piece(Piece piece) {
        pieces.add(piece);
        return this;
    }

    /** Room to write by hand. */
    Form blanks(int lines) {
        for (int i = 0; i < lines; i++) {
            pieces.add(new Blank(""));
        }
        return this;
    }

    /** The usual disclaimers (common practice). */
    Form careful() {
        return heading("Please note").points(CAREFUL);
    }

    Form signatures(String... who) {
        for (String each : who) {
            pieces.add(new Blank(each + ", date and signature"));
        }
        return this;
    }

    List<Piece> pieces() {
        return List.copyOf(pieces);
    }

    private Form add(Prose prose, Mark mark) {
        pieces.add(Item.of(prose, mark, POINTS));
        return this;
    }

    /** A rule to write on, over what is to be written. */
    private record Blank(String under) implements Piece {
        private static final double TALL = 8;
        private static final double RULE = 0.2;
        private static final double SMALL = 7.5;

        @Override
        public double height(Sheet sheet, double width) {
            return under.isEmpty() ? TALL + 1.5 : TALL + 2 * SMALL * Typeface.POINT;
        }

        @Override
        public void draw(Sheet sheet, double x, double y, double width) {
            double end = under.isEmpty() ? width : width / 2;
            sheet.line(x, y + TALL, x + end, y + TALL, RULE);
            sheet.text(under, Face.PLAIN, x, y + TALL + 1.2 * SMALL * Typeface.POINT, SMALL, 0);
        }
    }
}
