package hornbook.viewer.widget;

import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** How words from the books are set. */
public final class Words {
    private Words() {}

    /** With a capital and a full stop; nothing stays nothing. */
    public static String sentence(String words) {
        if (words.isBlank()) {
            return "";
        }
        String capital = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        return capital.matches(".*[.!?]") ? capital : capital + ".";
    }

    /** Text that breaks into lines, in a style. */
    public static Label text(String words, String style) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }

    /** A chance to be read at a glance. */
    public static String chance(double p) {
        double percent = 100 * p;
        if (percent >= 99.5) {
            return "over 99 %";
        }
        return percent < 1 ? "under 1 %" : String.format(Locale.ROOT, "%.0f %%", percent);
    }
}
