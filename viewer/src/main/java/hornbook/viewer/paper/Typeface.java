package hornbook.viewer.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The bundled type in one document. A sign that a face lacks is taken from the one that has all the trade's signs. */
public final class Typeface implements AutoCloseable {
    public static final double POINT = 25.4 / 72;

    private static final int REPLACEMENT = 0xFFFD;

    private final PDDocument document;
    private final Map<Face, Cut> cuts = new EnumMap<>(Face.class);
    private final Map<Face, Map<String, Double>> widths = new EnumMap<>(Face.class);

    public Typeface(PDDocument document) {
        this.document = document;
    }

    /** Text of one cut. */
    public record Run(Cut cut, String text) {}

    /** The text with what cannot be printed replaced: a break by a space, a sign the type lacks by �. */
    String printable(String text) {
        StringBuilder printable = new StringBuilder();
        text.codePoints().map(this::printable).forEach(printable::appendCodePoint);
        return printable.toString();
    }

    private int printable(int sign) {
        if (Character.isWhitespace(sign) || Character.isISOControl(sign)) {
            return ' ';
        }
        return cut(Face.SIGNS).has(sign) ? sign : REPLACEMENT;
    }

    /** Printable text parted where the face changes. */
    public List<Run> runs(String printable, Face face) {
        Cut wanted = cut(face);
        if (printable.codePoints().allMatch(wanted::has)) {
            return List.of(new Run(wanted, printable));
        }
        List<Run> runs = new ArrayList<>();
        printable.codePoints().forEach(sign -> {
            Cut cut = wanted.has(sign) ? wanted : cut(Face.SIGNS);
            String text = Character.toString(sign);
            if (!runs.isEmpty() && runs.getLast().cut().equals(cut)) {
                runs.set(runs.size() - 1, new Run(cut, runs.getLast().text() + text));
            } else {
                runs.add(new Run(cut, text));
            }
        });
        return runs;
    }

    /** Width in millimetres of printable text. */
    public double width(String printable, Face face, double points) {
        return points
                * widths.computeIfAbsent(face, _ -> new HashMap<>())
                        .computeIfAbsent(printable, text -> measured(text, face));
    }

    /** At one point; words are asked for again and again while lines are broken. */
    private double measured(String printable, Face face) {
        return runs(printable, face).stream()
                .mapToDouble(run -> run.cut().width(run.text()))
                .sum();
    }

    private Cut cut(Face face) {
        return cuts.computeIfAbsent(face, wanted -> {
            try {
                return new Cut(document, wanted);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        });
    }

    @Override
    public void close() throws IOException {
        for (Cut cut : cuts.values()) {
            cut.close();
        }
    }
}
