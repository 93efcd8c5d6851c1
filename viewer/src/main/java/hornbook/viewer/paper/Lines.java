package hornbook.viewer.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Breaks text into lines no wider than asked. Only a word wider than a line is broken inside. */
public final class Lines {
    private static final String ELLIPSIS = "…";

    private final double width;
    private final ToDoubleFunction<String> measure;

    public Lines(double width, ToDoubleFunction<String> measure) {
        this.width = width;
        this.measure = measure;
    }

    /** All lines of a text; none for an empty one. */
    public List<String> all(String text) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words(text)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (fits(longer)) {
                line = longer;
            } else {
                if (!line.isEmpty()) {
                    lines.add(line);
                }
                line = broken(word, lines);
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    /** The first lines; the last ends in an ellipsis where something is left over. */
    public List<String> first(int most, String text) {
        List<String> all = all(text);
        if (all.size() <= most) {
            return all;
        }
        List<String> first = new ArrayList<>(all.subList(0, Math.max(0, most)));
        if (!first.isEmpty()) {
            first.set(most - 1, cut(first.getLast() + " "));
        }
        return first;
    }

    /** Whether no word needs breaking inside. */
    public boolean wordsFit(String text) {
        return words(text).stream().allMatch(this::fits);
    }

    private String cut(String text) {
        int end = text.length();
        while (end > 0 && !fits(text.substring(0, end).strip() + ELLIPSIS)) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).strip() + ELLIPSIS;
    }

    private String broken(String word, List<String> lines) {
        String rest = word;
        while (!fits(rest)) {
            int end = rest.offsetByCodePoints(0, 1);
            while (end < rest.length() && fits(rest.substring(0, rest.offsetByCodePoints(end, 1)))) {
                end = rest.offsetByCodePoints(end, 1);
            }
            if (end == rest.length()) {
                break;
            }
            lines.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        return rest;
    }

    private boolean fits(String text) {
        return measure.applyAsDouble(text) <= width;
    }

    private static List<String> words(String text) {
        return text.isBlank() ? List.of() : List.of(text.strip().split("\\s+"));
    }
}
