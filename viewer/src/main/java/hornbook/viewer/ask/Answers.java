package hornbook.viewer.ask;

import hornbook.shared.shop.BadInput;
import java.util.Map;

/** What was answered, by the fields' names. */
public record Answers(Map<String, String> byField) {
    public Answers {
        byField = Map.copyOf(byField);
    }

    /** What was written or chosen, without spaces round it; empty where the field was left so. */
    public String text(String field) {
        return byField.getOrDefault(field, "").strip();
    }

    /** What must not be left empty. @throws BadInput naming what is wanted */
    public String needed(String field, String what) {
        String text = text(field);
        if (text.isEmpty()) {
            throw new BadInput(what + " is empty: fill it in");
        }
        return text;
    }

    /** A number of pieces, or of anything else that is counted. @throws BadInput where it is none */
    public int whole(String field, String what) {
        String text = needed(field, what);
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new BadInput(what + ": “" + text + "” is no whole number: write it in digits");
        }
    }
}
