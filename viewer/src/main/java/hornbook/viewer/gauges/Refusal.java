package hornbook.viewer.gauges;

import java.util.Map;
import java.util.regex.Pattern;

/** Why a size is not read, in the words over the fields: the reader names the options of the command. */
final class Refusal {
    private static final Pattern OPTION = Pattern.compile("--([a-z]+)");

    private static final Map<String, String> FIELDS = Map.of(
            "diameter", "Across the crests",
            "hole", "Across the crests",
            "pitch", "Crest to crest",
            "tpi", "Threads to the inch",
            "turns", "Turns",
            "over", "Over",
            "form", "Angle",
            "wall", "Metal round a stripped hole",
            "key", "Keys it serves",
            "instrument", "Instrument");

    private Refusal() {}

    static String inFields(String words) {
        return OPTION.matcher(words).replaceAll(option -> FIELDS.getOrDefault(option.group(1), option.group(1)));
    }
}
