package hornbook.indexer.fit;

import hornbook.catalogue.entry.Fitting;
import hornbook.catalogue.entry.Thing;
import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.Reading;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.BadInput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads the sizes and words of one question: what is wanted of the piece, and what belongs to the horn. */
final class WantReader {
    private static final double TOLERANCE = 0.1;
    private static final Pattern SIZE = Pattern.compile("[-+.,#\\d].*");

    private final Thing kind;
    private final Fitting fitting;
    private final SizeReader reader;
    private final Threads threads;
    private final BareInches inches;
    final Map<String, Want> wants = new LinkedHashMap<>();
    final Map<String, Value> facts = new LinkedHashMap<>();

    WantReader(Thing kind, Fitting fitting, SizeReader reader, Threads threads, BareInches inches) {
        this.kind = kind;
        this.fitting = fitting;
        this.reader = reader;
        this.threads = threads;
        this.inches = inches;
    }

    /** One of the options that every kind has, put to the dimension that is its. */
    void chief(Optional<String> text, @Nullable String dimension, String option) {
        if (text.isEmpty()) {
            return;
        }
        if (dimension == null) {
            throw new BadInput("a " + kind.title().toLowerCase(Locale.ROOT) + " has no " + option
                    + " to ask for: name its dimension, as --with height=7");
        }
        named(dimension, text.get());
    }

    void named(String name, String text) {
        if (fitting.facts().contains(name)) {
            once(facts, name, value(name, text));
        } else {
            once(wants, name, want(name, text));
        }
    }

    /** What is measured is asked for by a size: a word there would match nothing, or anything. */
    private boolean word(String name, String text) {
        return text.contains("|")
                || !SIZE.matcher(text.strip()).matches()
                        && !fitting.tolerances().containsKey(name);
    }

    /** What the horn's own sizes ask of the piece, where nobody asks otherwise: the pad of a cup, the tube of a rod. */
    void implied() {
        fitting.implied().forEach((dimension, implied) -> {
            double middle = FormulaReader.formula(implied.middle())
                    .value(name -> facts.get(name) instanceof Value.Amount(double mm, double _) ? mm : Double.NaN);
            if (!Double.isNaN(middle) && !asked(dimension)) {
                wants.put(dimension, new Want.Between(middle - implied.within(), middle + implied.within()));
            }
        });
    }

    private boolean asked(String dimension) {
        return wants.containsKey(dimension)
                || wants.keySet().stream()
                        .flatMap(name -> Optional.ofNullable(fitting.derived().get(name)).stream())
                        .anyMatch(formula ->
                                FormulaReader.formula(formula).names().contains(dimension));
    }

    static <V> void once(Map<String, V> into, String name, V value) {
        if (into.putIfAbsent(name, value) != null) {
            throw new BadInput("“" + name + "” is asked for twice: leave one of them out");
        }
    }

    private Want want(String name, String text) {
        if (name.equals("thread")) {
            return thread(text);
        }
        if (word(name, text)) {
            return new Want.Among(Bars.apart(text));
        }
        Measured size = size(name, text);
        inches.refuse(name, text, size.nominal().mm());
        double tolerance =
                size.kind() == Measured.Kind.SINGLE ? fitting.tolerances().getOrDefault(name, TOLERANCE) : 0;
        return new Want.Between(size.low().mm() - tolerance, size.high().mm() + tolerance);
    }

    private Measured size(String name, String text) {
        Reading<Measured> read = reader.measured(text, LengthUnit.MILLIMETRE);
        return read.found()
                .orElseThrow(() -> new BadInput(name + ": " + read.refusal().orElse("is no size")));
    }

    private Want thread(String text) {
        List<String> designations = new ArrayList<>();
        for (String each : Bars.apart(text)) {
            designations.add(threads.form(each)
                    .map(Threads.Form::designation)
                    .orElseThrow(
                            () -> new BadInput(reader.thread(each).refusal().orElse("“" + each + "” is no thread"))));
        }
        return new Want.Among(designations);
    }

    /** A size, a designation or a word that something has. */
    Value value(String name, String text) {
        if (name.equals("thread")
                || name.equals("was")
                || !SIZE.matcher(text.strip()).matches()) {
            return new Value.Word(
                    threads.form(text).map(Threads.Form::designation).orElse(text));
        }
        return Value.of(size(name, text).nominal());
    }
}
