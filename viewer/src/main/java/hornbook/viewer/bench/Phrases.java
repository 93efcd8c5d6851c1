package hornbook.viewer.bench;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitValue;
import hornbook.catalogue.identify.Candidate;
import hornbook.catalogue.identify.Seen;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What was seen and what it comes to, in words. */
final class Phrases {
    private static final double MILLIMETRES_AN_INCH = 25.4;
    private static final double HARDLY = 1.05;
    private static final double MORE_THAN_COUNTS = 1000;

    private final Catalogue catalogue;

    Phrases(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** What a person calls that entry; its id where there is none. */
    String title(String id) {
        return catalogue.entry(id).map(Entry::title).orElse(id);
    }

    /** A value in a word or two. */
    static String name(String value) {
        return value.replace('-', ' ');
    }

    String value(String trait, String value) {
        Trait known = catalogue.traits().get(trait);
        return known == null
                ? value
                : known.value(value).map(TraitValue::description).orElse(value);
    }

    /** What a look showed. */
    String of(Seen seen) {
        return switch (seen) {
            case Seen.OneOf(String _, List<String> values) ->
                values.stream().map(Phrases::name).collect(Collectors.joining(" or "));
            case Seen.Parts parts -> parts(parts);
            case Seen.Measured(String _, double mm, double _) -> both(mm);
            case Seen.Absent _ -> "there is none on this horn";
            case Seen.CannotTell _ -> "can\u2019t tell";
        };
    }

    private String parts(Seen.Parts parts) {
        String there = named(parts, true);
        String not = named(parts, false);
        return there + (there.isEmpty() || not.isEmpty() ? "" : "; ") + (not.isEmpty() ? "" : "not: " + not);
    }

    private String named(Seen.Parts parts, boolean there) {
        return parts.there().entrySet().stream()
                .filter(e -> e.getValue() == there)
                .map(Map.Entry::getKey)
                .map(Phrases::name)
                .collect(Collectors.joining(", "));
    }

    private static String both(double mm) {
        return String.format(Locale.ROOT, "%.2f mm (%.4f in)", mm, mm / MILLIMETRES_AN_INCH)
                .replace("(0.", "(.");
    }

    /** An answer as the reckoning names it, {@code trait=value}, with its title before it. */
    String answer(String written, InHand horn) {
        if (written.equals(InHand.SERIAL)) {
            return "Serial " + horn.serial();
        }
        if (written.equals(InHand.MARK)) {
            return "Name on it: " + horn.mark();
        }
        return horn.looks().stream()
                .filter(s -> s.written().equals(written))
                .findFirst()
                .map(s -> title(s.trait()) + ": " + of(s))
                .orElse(written);
    }

    /** How much an answer speaks for a candidate, from the logarithm of its odds. */
    static String weight(double logOdds) {
        double odds = Math.exp(Math.abs(logOdds));
        if (odds < HARDLY) {
            return "says little";
        }
        String many =
                odds >= MORE_THAN_COUNTS ? "over 1000" : String.format(Locale.ROOT, odds < 10 ? "%.1f" : "%.0f", odds);
        return many + " to 1 " + (logOdds > 0 ? "for" : "against");
    }

    static String years(Candidate candidate) {
        var span = candidate.years();
        if (span == null) {
            return "";
        }
        return span.from() == span.to() ? "about " + span.from() : span.from() + "\u2013" + span.to();
    }
}
