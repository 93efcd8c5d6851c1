package hornbook.catalogue.picture;

import hornbook.catalogue.picture.PathData.Step;
import java.util.ArrayList;
import java.util.List;

/** Walks path data and writes it one way: absolute, only M L C Q A Z, to a chosen fineness. */
final class Outline {
    private final double fineness;
    private final List<String> written = new ArrayList<>();
    private double x;
    private double y;
    private double startX;
    private double startY;
    private double handleX;
    private double handleY;

    private Outline(double fineness) {
        this.fineness = fineness;
    }

    /** The same geometry always the same text, to that many picture units. */
    static String of(String path, double fineness) {
        Outline outline = new Outline(fineness);
        PathData.read(path).forEach(outline::walk);
        return String.join(" ", outline.written);
    }

    private void walk(Step step) {
        char letter = Character.toUpperCase(step.letter());
        boolean relative = letter != step.letter();
        List<Double> n = absolute(letter, step.numbers(), relative ? x : 0, relative ? y : 0);
        switch (letter) {
            case 'H' -> write('L', List.of(n.getFirst(), y));
            case 'V' -> write('L', List.of(x, n.getFirst()));
            case 'S' -> write('C', List.of(2 * x - handleX, 2 * y - handleY, n.get(0), n.get(1), n.get(2), n.get(3)));
            case 'Z' -> {
                written.add("Z");
                moveTo(startX, startY);
            }
            default -> write(letter, n);
        }
        if (letter == 'M') {
            startX = x;
            startY = y;
        }
    }

    private static List<Double> absolute(char letter, List<Double> numbers, double dx, double dy) {
        List<Double> moved = new ArrayList<>(numbers);
        for (int i = 0; i < moved.size(); i++) {
            boolean across = letter == 'V' ? false : letter == 'A' ? i == 5 : i % 2 == 0;
            boolean still = letter == 'A' && i < 5;
            moved.set(i, numbers.get(i) + (still ? 0 : across ? dx : dy));
        }
        return moved;
    }

    private void write(char letter, List<Double> numbers) {
        written.add(String.valueOf(letter));
        numbers.forEach(n -> written.add(Geometry.plain(Math.round(n / fineness) * fineness)));
        int last = numbers.size() - 1;
        moveTo(numbers.get(last - 1), numbers.get(last));
        if (letter == 'C') {
            handleX = numbers.get(2);
            handleY = numbers.get(3);
        }
    }

    private void moveTo(double toX, double toY) {
        x = toX;
        y = toY;
        handleX = toX;
        handleY = toY;
    }
}
