package hornbook.indexer.fit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Fitting;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Nearest;
import hornbook.catalogue.entry.Thing;
import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.Reading;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.BadInput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads a question in a person's words against the entries. */
final class FitReader {
    private static final double TOLERANCE = 0.1;
    private static final Pattern SIZE = Pattern.compile("[-+.,#\\d].*");

    private final Catalogue catalogue;
    private final SizeReader reader;
    private final Threads threads;
    private final KindNames kinds;

    FitReader(Catalogue catalogue, SizeReader reader, Threads threads) {
        this.catalogue = catalogue;
        this.reader = reader;
        this.threads = threads;
        this.kinds = new KindNames(catalogue);
    }

    /**
     * @param stated names of dimensions that lots of the kind state
     * @throws BadInput naming what cannot be read, and the nearest that could
     */
    Asked read(FitQuestion question, java.util.function.Function<Crafts, List<String>> stated) {
        Thing kind = kinds.find(question.kind());
        Fitting fitting = catalogue.fitting(kind.id()).orElseGet(FitReader::nothing);
        Crafts crafts = new Crafts(catalogue, kind.id(), fitting);
        DimensionNames names = new DimensionNames(kind, fitting, stated.apply(crafts));
        Map<String, Want> wants = new LinkedHashMap<>();
        Map<String, Value> facts = new LinkedHashMap<>();
        chief(question.diameter(), fitting.diameter(), "diameter", kind, fitting, wants);
        chief(question.length(), fitting.length(), "length", kind, fitting, wants);
        chief(question.bore(), fitting.bore(), "bore", kind, fitting, wants);
        question.thread().ifPresent(text -> wants.put("thread", thread(text)));
        for (String pair : question.with()) {
            Map.Entry<String, String> with = pair("--with", pair);
            String name = names.find(with.getKey());
            if (fitting.facts().contains(name)) {
                once(facts, name, value(name, with.getValue()));
            } else {
                once(wants, name, want(name, with.getValue(), fitting));
            }
        }
        Map<String, Value> own = own(question, names);
        count(question.count());
        if (wants.isEmpty()) {
            throw new BadInput("nothing is asked of it: give --diameter, --length, --thread or --with NAME=VALUE, of "
                    + String.join(", ", names.all()));
        }
        return new Asked(
                kind,
                crafts,
                wants,
                facts,
                own,
                question.model().map(this::model),
                question.reserve(),
                question.count(),
                shown(wants, facts));
    }

    private void chief(
            Optional<String> text,
            @Nullable String dimension,
            String option,
            Thing kind,
            Fitting fitting,
            Map<String, Want> wants) {
        if (text.isEmpty()) {
            return;
        }
        if (dimension == null) {
            throw new BadInput("a " + kind.title().toLowerCase(java.util.Locale.ROOT) + " has no " + option
                    + " to ask for: name its dimension, as --with height=7");
        }
        once(wants, dimension, want(dimension, text.get(), fitting));
    }

    private static <V> void once(Map<String, V> into, String name, V value) {
        if (into.putIfAbsent(name, value) != null) {
            throw new BadInput("“" + name + "” is asked for twice: leave one of them out");
        }
    }

    private Want want(String name, String text, Fitting fitting) {
        if (name.equals("thread")) {
            return thread(text);
        }
        if (text.contains("|") || !SIZE.matcher(text.strip()).matches()) {
            return new Want.Among(Bars.apart(text));
        }
        Measured size = size(name, text);
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

    private Value value(String name, String text) {
        if (name.equals("thread")
                || name.equals("was")
                || !SIZE.matcher(text.strip()).matches()) {
            return new Value.Word(
                    threads.form(text).map(Threads.Form::designation).orElse(text));
        }
        return Value.of(size(name, text).nominal());
    }

    private Map<String, Value> own(FitQuestion question, DimensionNames names) {
        Map<String, Value> own = new LinkedHashMap<>();
        for (String pair : question.own()) {
            Map.Entry<String, String> has = pair("--own", pair);
            String name = names.find(has.getKey());
            once(own, name, value(name, has.getValue()));
        }
        return own;
    }

    private static Map.Entry<String, String> pair(String option, String text) {
        int equals = text.indexOf('=');
        if (equals < 1 || equals == text.length() - 1) {
            throw new BadInput(option + " “" + text + "” is not written as name=value, as nose=headed-tapered");
        }
        return Map.entry(
                text.substring(0, equals).strip(), text.substring(equals + 1).strip());
    }

    private static void count(int count) {
        if (count < 1) {
            throw new BadInput("--count " + count + ": at least one piece is wanted");
        }
    }

    private Model model(String typed) {
        return catalogue.models().values().stream()
                .filter(m -> m.id().equals(typed) || m.title().equalsIgnoreCase(typed.strip()))
                .findFirst()
                .orElseThrow(() -> new BadInput("--for “" + typed + "” is no model known here: "
                        + Nearest.of(typed, catalogue.models().keySet())
                                .map(near -> "perhaps " + near + " is meant")
                                .orElse("“hornbook find " + typed + "” may show its id")));
    }

    private static List<String> shown(Map<String, Want> wants, Map<String, Value> facts) {
        List<String> shown = new ArrayList<>();
        wants.forEach((name, want) -> shown.add(name + " " + want.shown()));
        facts.forEach((name, value) -> shown.add(name + " " + value.shown()));
        return shown;
    }

    private static Fitting nothing() {
        return new Fitting(
                null, null, null, Map.of(), Map.of(), List.of(), Map.of(), Map.of(), Map.of(), List.of(), Map.of(),
                Map.of(), Map.of(), Map.of(), Map.of(), null, null, null);
    }
}
