package hornbook.indexer.fit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Fitting;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What would serve where nothing on hand will do: the thing itself, or round stock of a usual size to make it from. */
final class Buying {
    /** Enough to hold while it is worked, mm. */
    private static final double SPARE = 100;
    /** No use buying stock more than this thicker than the part, mm. */
    private static final double THICKER = 2;

    private static final double SIXTY_FOURTH = 25.4 / 64;

    private final Asked asked;
    private final Aims aims;
    private final ShopRack rack;
    private final Minutes minutes;
    private final Catalogue catalogue;

    Buying(Asked asked, Aims aims, ShopRack rack, Minutes minutes, Catalogue catalogue) {
        this.asked = asked;
        this.aims = aims;
        this.rack = rack;
        this.minutes = minutes;
        this.catalogue = catalogue;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(asked.kind().title() + ", " + String.join(", ", asked.shown()));
        Fitting kind = catalogue.fitting(asked.kind().id()).orElse(null);
        if (kind != null) {
            kind.blanks().keySet().forEach(item -> stock(item).ifPresent(lines::add));
        }
        return lines;
    }

    /** The size of stock that takes the least work; of two alike the thinner. */
    private Optional<String> stock(String item) {
        Fitting fitting = catalogue.fitting(item).orElse(null);
        if (fitting == null || fitting.diameter() == null || fitting.length() == null) {
            return Optional.empty();
        }
        Plan best = null;
        double size = 0;
        for (double mm : sizes()) {
            Plan plan = plan(item, fitting, mm);
            if (plan != null && (best == null || plan.betterThan(best))) {
                best = plan;
                size = mm;
            }
        }
        return best == null ? Optional.empty() : Optional.of(words(item, size, best));
    }

    private @Nullable Plan plan(String item, Fitting fitting, double mm) {
        Craft craft = asked.crafts().of(item);
        Map<String, Value> has = new HashMap<>();
        craft.usualBlank().forEach((name, text) -> has.put(name, Pieces.value(text, n -> null)));
        asked.wants().forEach((name, want) -> given(has, name, want));
        String round = java.util.Objects.requireNonNull(fitting.diameter());
        String length = java.util.Objects.requireNonNull(fitting.length());
        has.put(round, Value.of(mm));
        has.put(length, Value.of(longest() + SPARE));
        Map<String, String> like = new TreeMap<>();
        craft.usualBlank().forEach((name, text) -> like(has, like, name, text));
        Piece piece = new Piece(item, item, craft, has, like, java.util.Set.of(), PieceClass.BLANK, Optional.empty());
        Aim aim = aims.of(piece);
        return new Search(aim, rack, new Charges(Optional.empty()), minutes, piece)
                .best()
                .orElse(null);
    }

    /** Colour and material can be had as they are asked for; what is cut is not bought cut. */
    private static void given(Map<String, Value> has, String name, Want want) {
        if (want instanceof Want.Among(var words) && !has.containsKey(name) && !name.equals("thread")) {
            has.put(name, new Value.Word(words.getFirst()));
        }
    }

    private static void like(Map<String, Value> has, Map<String, String> like, String name, String text) {
        if (has.containsKey(text) && !name.equals(text)) {
            has.remove(name);
            like.put(name, text);
        }
    }

    private double longest() {
        return asked.wants().values().stream()
                .filter(Want.Between.class::isInstance)
                .mapToDouble(want -> ((Want.Between) want).high())
                .max()
                .orElse(0);
    }

    /** Tenths of a millimetre and 64ths of an inch about what is wanted. */
    private List<Double> sizes() {
        double most = round() + THICKER;
        Stream<Double> metric =
                IntStream.rangeClosed(5, (int) Math.ceil(most * 10)).mapToObj(i -> i / 10.0);
        Stream<Double> inch =
                IntStream.rangeClosed(2, (int) Math.ceil(most / SIXTY_FOURTH)).mapToObj(i -> i * SIXTY_FOURTH);
        return Stream.concat(metric, inch)
                .filter(mm -> mm >= round() - THICKER && mm <= most)
                .sorted()
                .toList();
    }

    /** The thickest round thing wanted: the thread, or the chief round measure. */
    private double round() {
        Fitting kind = catalogue.fitting(asked.kind().id()).orElseThrow();
        double chief = kind.diameter() != null && asked.wants().get(kind.diameter()) instanceof Want.Between between
                ? between.high()
                : 0;
        double thread = asked.wants().get("thread") instanceof Want.Among(var words)
                ? aims.threads().form(words.getFirst()).map(Threads.Form::major).orElse(0.0)
                : 0;
        return Math.max(chief, thread);
    }

    private String words(String item, double mm, Plan plan) {
        String steps = plan.end().steps.stream()
                .map(done -> done.move().operation().title().toLowerCase(Locale.ROOT))
                .distinct()
                .collect(Collectors.joining(", "));
        String title = catalogue.entry(item).map(Entry::title).orElse(item);
        String wanted = other(title);
        String inch = mm * 10 == Math.rint(mm * 10) ? "" : " (" + Math.round(mm / SIXTY_FOURTH) + "/64 in)";
        return title + " of " + Shown.mm(mm) + inch + wanted + ": " + (steps.isEmpty() ? "as it is" : steps) + ", "
                + Shown.number(plan.minutes()) + " min";
    }

    /** A material or colour that the stock's name does not promise. */
    private String other(String title) {
        String named = title.toLowerCase(Locale.ROOT);
        return Stream.of("material", "colour")
                .flatMap(name -> Stream.ofNullable(asked.wants().get(name)))
                .map(Want::shown)
                .filter(word -> !named.contains(word.toLowerCase(Locale.ROOT)))
                .map(word -> ", if it is to be had in " + word)
                .collect(Collectors.joining());
    }
}
