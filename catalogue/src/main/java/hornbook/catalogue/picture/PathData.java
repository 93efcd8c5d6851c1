package hornbook.catalogue.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Path data of the subset: the commands M L H V C S Q A Z, absolute or relative. */
final class PathData {
    private static final String LETTERS = "MLHVCSQAZ";
    private static final List<Integer> NUMBERS = List.of(2, 2, 1, 1, 6, 4, 4, 7, 0);
    private static final Pattern COMMAND = Pattern.compile("([A-Za-z])([^A-Za-z]*)");
    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)");
    private static final Pattern BETWEEN = Pattern.compile("[\\s,]*");

    private PathData() {}

    /**
     * One command.
     *
     * @param letter a small one is relative
     * @param numbers as many as the letter takes
     */
    record Step(char letter, List<Double> numbers) {}

    /**
     * Reads path data whole; a letter left out is repeated, a repeated move is a line.
     *
     * @throws IllegalArgumentException saying what is not of the subset
     */
    static List<Step> read(String data) {
        String text = data.strip();
        if (!text.startsWith("M") && !text.startsWith("m")) {
            throw new IllegalArgumentException("path data does not start with a move (M)");
        }
        List<Step> steps = new ArrayList<>();
        Matcher command = COMMAND.matcher(text);
        while (command.find()) {
            steps.addAll(steps(command.group(1).charAt(0), numbers(command.group(2))));
        }
        return steps;
    }

    /** Reads numbers parted by spaces or commas. */
    static List<Double> numbers(String text) {
        List<Double> numbers = new ArrayList<>();
        Matcher number = NUMBER.matcher(text);
        int at = 0;
        while (number.find()) {
            gap(text.substring(at, number.start()));
            numbers.add(Double.valueOf(number.group()));
            at = number.end();
        }
        gap(text.substring(at));
        return numbers;
    }

    private static void gap(String between) {
        if (!BETWEEN.matcher(between).matches()) {
            throw new IllegalArgumentException("'" + between.strip() + "' is not a number");
        }
    }

    private static List<Step> steps(char letter, List<Double> numbers) {
        int place = LETTERS.indexOf(Character.toUpperCase(letter));
        if (place < 0) {
            throw new IllegalArgumentException("path command " + letter + " is not of the subset");
        }
        int wanted = NUMBERS.get(place);
        if (wanted == 0 ? !numbers.isEmpty() : numbers.isEmpty() || numbers.size() % wanted != 0) {
            throw new IllegalArgumentException(
                    "path command " + letter + " takes " + wanted + " numbers, not " + numbers.size());
        }
        if (wanted == 0) {
            return List.of(new Step(letter, List.of()));
        }
        List<Step> steps = new ArrayList<>();
        for (int from = 0; from < numbers.size(); from += wanted) {
            steps.add(step(from == 0 ? letter : again(letter), numbers.subList(from, from + wanted)));
        }
        return steps;
    }

    private static char again(char letter) {
        return switch (letter) {
            case 'M' -> 'L';
            case 'm' -> 'l';
            default -> letter;
        };
    }

    private static Step step(char letter, List<Double> numbers) {
        boolean arc = Character.toUpperCase(letter) == 'A';
        if (arc && !(flag(numbers.get(3)) && flag(numbers.get(4)))) {
            throw new IllegalArgumentException("the flags of an arc are 0 or 1");
        }
        return new Step(letter, List.copyOf(numbers));
    }

    private static boolean flag(double number) {
        return number == 0 || number == 1;
    }
}
