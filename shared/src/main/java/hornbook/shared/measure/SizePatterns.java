package hornbook.shared.measure;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a size looks like in a free text; whether it is one, the readers decide. Tighter than the readers, since a text
 * holds much that is no size: dates, counts, "3 in the drawer", "a drill".
 */
final class SizePatterns {
    private static final String NUMBER = "(?:\\d{1,5}(?:[.,]\\d{1,6})?|[.,]\\d{1,6})";
    private static final String FRACTION = "(?:(?:\\d{1,2}[ -])?\\d{1,2} ?[/⁄] ?\\d{1,3}|(?:\\d{1,2}[ -]?)?[½¼¾⅛⅜⅝⅞])";
    private static final String AMOUNT = "(?:" + FRACTION + "|" + NUMBER + ")";
    private static final String INCH = "(?:\"|″|”|''|in(?:ch(?:es)?)?\\b)";
    private static final String UNIT = "(?:mm|millimet(?:re|er)s?|cm|[uµμ]m|microns?|thou|" + INCH + ")";
    private static final String NO_UNIT = "(?! ?" + UNIT + ")";
    /** A row of measures, {@code 55 x 4 x 0.5}, and the section of a strip, {@code spring 4 x 0.5}, are no threads. */
    private static final String ALONE =
            "(?<![x×] ?)(?<!(?:spring|strip|felt|cork|sheet|card|pad|pearl|disc|roller|bumper|tube)s? )";

    private static final String NOT_BY = "(?! ?[x×] ?[\\d.])";
    private static final String NO = "(?:no\\.? ?|number )";
    private static final String SERIES = "(?: ?(?:" + ThreadGrammar.SERIES + ")\\b)";
    private static final String GAUGE = Arrays.stream(GaugeSystem.values())
            .map(GaugeSystem::alias)
            .collect(Collectors.joining("|", "(?:", ")(?: ?(?:gauge|wire|sheet))*"));
    private static final String GAUGE_NUMBER = "(?:0{2,7}|[1-9]/0|\\d{1,2})";
    // 7/32 is a fraction of an inch before it is the thread 7-32; 6/32 and 3/48 are no such fraction.
    private static final String NUMBER_THREAD = "(?:\\d{1,2}-\\d{2}(?: tpi)?" + SERIES + "?"
            + "|(?!\\d*[13579]/(?:2|4|8|16|32|64)\\b)\\d{1,2}/\\d{2}" + SERIES + "?"
            + "|\\d{1,2}(?:/\\d{1,2})?\"?" + SERIES + "|\\d{1,2} ?b\\.?a\\b\\.?)" + NO_UNIT;

    /** A size that begins with a word. A and I are letter drills only as the whole text: elsewhere they are words. */
    static final List<Pattern> WORDY_NAMES = List.of(
            any(GAUGE + " ?(?:#|" + NO + ")?" + GAUGE_NUMBER),
            any(NO + GAUGE_NUMBER + " ?" + GAUGE),
            any(NO + "\\d{1,2} drill|drill (?:#|no\\.? ?)\\d{1,2}"),
            any("letter [a-z](?: drill)?"),
            Pattern.compile("[B-HJ-Z] drill|^[AI] drill$"));

    static final List<Pattern> WORDY_THREADS = List.of(
            any("m ?" + NUMBER + " ?[x×] ?" + NUMBER + "|m" + NUMBER + "(?: (?:coarse|fine))?" + NOT_BY),
            any(NO + NUMBER_THREAD),
            any("s\\d(?:[.,]\\d)?|loewenherz " + NUMBER));

    static final List<Pattern> NAMES = List.of(any(GAUGE_NUMBER + " ?" + GAUGE));

    static final List<Pattern> THREADS = List.of(
            any("\\d{1,2}/\\d{1,2}\"? ?[-x×] ?\\d{2}(?: tpi)?" + SERIES + "?" + NO_UNIT),
            any(NUMBER_THREAD),
            any(ALONE + NUMBER + " ?[x×] ?" + NUMBER + NOT_BY + NO_UNIT));

    /** Lengths whose bare decimals are millimetres. */
    static final List<Pattern> LENGTHS = List.of(
            any(AMOUNT + " ?" + UNIT + "? ?(?:±|\\+ ?/? ?-|\\.\\.|…|–|-) ?" + AMOUNT + " ?" + UNIT),
            any("(?:" + FRACTION + "|\\d*[.,]\\d+) ?" + UNIT),
            any("\\d{1,5} ?(?!in\\b)" + UNIT),
            // After a whole number "in" before a word is that word.
            any("\\d{1,5} ?in\\b(?! [a-z])"),
            Pattern.compile("\\d{1,2}/(?:8|16|32|64)"),
            Pattern.compile("\\d{1,3}[.,]\\d{1,4}"));

    /** Bare decimals as the trade writes inches. */
    static final List<Pattern> BARE_INCHES = List.of(Pattern.compile("\\.\\d{3,4}"));

    static final List<Pattern> HASH_THREADS = List.of(any("#" + NUMBER_THREAD));

    /** A number drill needs no word; {@code #4 screw} is none. */
    static final List<Pattern> HASH_NAMES =
            List.of(any("#" + GAUGE_NUMBER + " ?" + GAUGE), any("#\\d{1,2}(?: drill|(?! ?screw))"));

    private SizePatterns() {}

    private static Pattern any(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }
}
