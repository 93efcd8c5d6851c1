package hornbook.shared.measure;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A gauge by which wire or sheet is numbered. In all but music wire the metal gets thinner as the number grows.
 *
 * <p>{@code Stubs} alone is two gauges, iron and steel, which differ by up to 0.07 in; sheet brass goes by AWG, sheet
 * steel by the Manufacturers' gauge.
 */
public enum GaugeSystem {
    AWG("AWG", "AWG", "a\\.?w\\.?g\\b\\.?|american wire|sheet brass|brass sheet"),
    SWG("SWG", "SWG", "s\\.?w\\.?g\\b\\.?|imperial(?: standard)? wire|british(?: standard)? wire|standard wire"),
    US_STANDARD("US standard sheet", "US standard sheet (1893 iron)", "u\\.?s\\.? standard(?: sheet)?|uss\\b"),
    MANUFACTURERS(
            "Manufacturers' sheet",
            "Manufacturers' standard sheet",
            "manufacturers'?(?: standard)?(?: sheet)?|sheet steel|steel sheet"),
    BWG("BWG", "BWG (Stubs iron wire)", "b\\.?w\\.?g\\b\\.?|birmingham(?: wire)?|stubs'? iron(?: wire)?"),
    STUBS_STEEL("Stubs steel wire", "Stubs steel wire", "stubs'? steel(?: wire)?|drill rod"),
    US_STEEL("US steel wire", "US steel wire", "u\\.?s\\.? steel(?: wire)?|steel wire"),
    MUSIC("music wire", "Music wire", "music wire|piano wire|music");

    private final String shown;
    private final String tableName;
    private final String alias;
    private final Pattern numbered;

    GaugeSystem(String shown, String tableName, String alias) {
        this.shown = shown;
        this.tableName = tableName;
        this.alias = Pattern.quote(tableName.toLowerCase(Locale.ROOT)) + "|" + alias;
        String name = "(?:" + this.alias + ")(?: ?(?:gauge|gage|ga\\.?|wire|sheet))*";
        String number = "(?:(?:#|no\\.?|number|nr\\.?) ?)?(0{2,7}|[1-9]/0|\\d{1,2})";
        this.numbered = Pattern.compile(name + " ?" + number + "|" + number + " ?" + name);
    }

    /** The gauge as we write it before a number: {@code music wire}. */
    public String shown() {
        return shown;
    }

    /** The gauge as the shipped table calls it. */
    String tableName() {
        return tableName;
    }

    /** The names people give it, as a regular expression for lower-case text. */
    String alias() {
        return alias;
    }

    /** The gauge and one of its numbers, in lower case, either first; the number is a group. */
    Pattern numbered() {
        return numbered;
    }

    static GaugeSystem ofTable(String name) {
        for (GaugeSystem system : values()) {
            if (system.tableName.equals(name)) {
                return system;
            }
        }
        throw new IllegalStateException("gauges.csv names an unknown gauge: " + name);
    }
}
