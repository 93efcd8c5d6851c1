package hornbook.catalogue.spring;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Nearest;
import hornbook.catalogue.entry.Span;
import hornbook.catalogue.entry.SpringChoice;
import hornbook.catalogue.entry.SpringForm;
import hornbook.catalogue.entry.SpringSize;
import hornbook.catalogue.spring.SpringAnswer.Usual;
import hornbook.catalogue.spring.SpringAnswer.Wire;
import hornbook.shared.measure.GaugeSystem;
import hornbook.shared.measure.Length;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.BadInput;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Answers which spring. */
public final class Springs {
    /** Young's modulus of spring steel, N/mm² (Machinery's Handbook, music wire: 30 000 000 psi). */
    private static final double STEEL = 206_843;

    private static final double GRAMS = 1000 / 9.80665;
    private static final double NEAR = 0.16;
    /** Wire in a post hole: this much under it (common practice, from memory), mm. */
    private static final Span UNDER_HOLE = new Span(0.03, 0.10);

    private static final double TINY = 1e-9;

    /** The heaviest octave and bell key springs stay well under it (common practice). */
    private static final double THICKEST = 3;

    private final Catalogue catalogue;
    private final StandardSizes tables;

    public Springs(Catalogue catalogue, StandardSizes tables) {
        this.catalogue = catalogue;
        this.tables = tables;
    }

    /**
     * The answer.
     *
     * @throws BadInput where wire and strip are both given or neither, or no such key or instrument is known
     */
    public SpringAnswer answer(SpringQuestion question) {
        boolean needle = question.diameter().isPresent();
        if (needle == question.thickness().isPresent()
                || question.thickness().isPresent() != question.width().isPresent()) {
            throw new BadInput("give --diameter for a needle spring, or --width and --thickness for a flat one");
        }
        double size = wire(needle ? question.diameter() : question.thickness());
        double width = needle ? 0 : positive(question.width());
        double length = positive(Optional.of(question.length()));
        double newLength =
                question.toLength().map(l -> positive(Optional.of(l))).orElse(length);
        double newSize = question.toDiameter().map(l -> wire(Optional.of(l))).orElse(size);
        double power = needle ? 4 : 3;
        double stiff = stiffness(needle, size, width, length);
        boolean changed =
                question.toDiameter().isPresent() || question.toLength().isPresent();
        return new SpringAnswer(
                rounded(stiff, 4),
                rounded(stiff * GRAMS, 2),
                changed ? rounded(change(size, length, newSize, newLength, power), 1) : null,
                question.toLength().isPresent() ? rounded(size * Math.pow(newLength / length, 3 / power), 3) : null,
                wires(needle, size, length, newLength, power, question.hole()),
                usual(question, needle, size),
                remarks(question, needle));
    }

    /** Force a millimetre at the tip of a cantilever: 3 E I / l³, I = π d⁴/64 or w t³/12 (Machinery's Handbook). */
    static double stiffness(boolean needle, double size, double width, double length) {
        double inertia = needle ? Math.PI * Math.pow(size, 4) / 64 : width * Math.pow(size, 3) / 12;
        return 3 * STEEL * inertia / Math.pow(length, 3);
    }

    /** Per cent. */
    static double change(double size, double length, double newSize, double newLength, double power) {
        return 100 * (Math.pow(newSize / size, power) * Math.pow(length / newLength, 3) - 1);
    }

    private List<Wire> wires(
            boolean needle, double size, double length, double newLength, double power, Optional<Length> hole) {
        Stream<Wire> metric = IntStream.rangeClosed(4, 40)
                .mapToObj(i -> i * 0.05)
                .map(mm -> wire(String.format(Locale.ROOT, "%.2f mm", mm), mm, size, length, newLength, power, hole));
        Stream<Wire> music = needle
                ? tables.gauges()
                        .of(GaugeSystem.MUSIC)
                        .map(row -> wire(row.text(), row.size().mm(), size, length, newLength, power, hole))
                : Stream.empty();
        return Stream.concat(metric, music)
                .filter(wire -> Math.abs(wire.mm() - size) <= NEAR * size)
                .sorted(Comparator.comparingDouble(Wire::mm))
                .toList();
    }

    private static Wire wire(
            String name, double mm, double size, double length, double newLength, double power, Optional<Length> hole) {
        Boolean goesIn =
                hole.map(h -> UNDER_HOLE.holds(rounded(h.mm() - mm, 6))).orElse(null);
        return new Wire(name, rounded(mm, 4), rounded(change(size, length, mm, newLength, power), 1), goesIn);
    }

    private List<Usual> usual(SpringQuestion question, boolean needle, double size) {
        List<Usual> usual = new ArrayList<>();
        boolean known = false;
        for (SpringChoice choice : catalogue.all(SpringChoice.class).values()) {
            SpringSize sizes = choice.sizes().get(question.instrument());
            known |= sizes != null;
            boolean form = (choice.form() == SpringForm.NEEDLE) == needle;
            if (sizes != null && form && serves(choice, question.key())) {
                Span span = needle ? sizes.diameter() : sizes.thickness();
                if (span != null && (question.key().isPresent() || span.holds(size))) {
                    usual.add(
                            new Usual(choice.title(), span.low(), span.high(), stands(span, size), choice.sureness()));
                }
            }
        }
        if (!known) {
            throw new BadInput("--instrument “" + question.instrument() + "” is not soprano, alto, tenor or baritone");
        }
        if (usual.isEmpty() && question.key().isPresent()) {
            throw new BadInput("--key “" + question.key().get() + "” names none of: " + keys(needle));
        }
        return usual;
    }

    private String keys(boolean needle) {
        return String.join(
                "; ",
                catalogue.all(SpringChoice.class).values().stream()
                        .filter(choice -> (choice.form() == SpringForm.NEEDLE) == needle)
                        .map(SpringChoice::title)
                        .toList());
    }

    private static boolean serves(SpringChoice choice, Optional<String> key) {
        String title = choice.title().toLowerCase(Locale.ROOT);
        List<String> words = List.of(title.split("[^a-z#]+", -1));
        return key.isEmpty()
                || Stream.of(key.get().toLowerCase(Locale.ROOT).split("[ ,()]+", -1))
                        .filter(word -> !word.isEmpty())
                        .allMatch(word -> words.contains(word) || nearly(word, words));
    }

    /** A slip in a word of five letters or more. */
    private static boolean nearly(String word, List<String> words) {
        return word.length() > 4 && Nearest.of(word, words).isPresent();
    }

    private static String stands(Span span, double size) {
        return size < span.low() - TINY ? "thinner" : size > span.high() + TINY ? "thicker" : "within";
    }

    private static List<String> remarks(SpringQuestion question, boolean needle) {
        List<String> remarks = new ArrayList<>();
        remarks.add("of steel; stainless and bronze are softer: one step thicker for stainless");
        remarks.add("change the set before the wire, the wire before the length");
        if (needle && question.hole().isPresent()) {
            remarks.add("the wire goes in 0.03 to 0.10 mm under the hole; the tail is flattened 0.02 to 0.06 over it");
        }
        remarks.add("cut ends fly: hold both, goggles");
        return remarks;
    }

    private static double wire(Optional<Length> size) {
        double mm = positive(size);
        if (mm > THICKEST) {
            throw new BadInput(rounded(mm, 3) + " mm is no spring of a key, which end at " + rounded(THICKEST, 0)
                    + " mm: was another unit meant?");
        }
        return mm;
    }

    private static double positive(Optional<Length> length) {
        double mm = length.orElseThrow().mm();
        if (mm <= 0) {
            throw new BadInput("a spring of " + rounded(mm, 3) + " mm is none: give a size above nought");
        }
        return mm;
    }

    private static double rounded(double value, int places) {
        double scale = Math.pow(10, places);
        return Math.round(value * scale) / scale;
    }
}
