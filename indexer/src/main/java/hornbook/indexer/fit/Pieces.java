package hornbook.indexer.fit;

import hornbook.shared.measure.DimensionValue;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads lots as pieces: what is stated of them, and what such pieces usually have. */
final class Pieces {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    private final SizeReader reader;
    private final Threads threads;

    Pieces(SizeReader reader, Threads threads) {
        this.reader = reader;
        this.threads = threads;
    }

    Piece of(Lot lot, Craft craft) {
        Map<String, Value> has = new LinkedHashMap<>();
        stated(lot.dimensions()).forEach(has::put);
        if (lot.thread() != null) {
            has.put("thread", thread(lot.thread()));
        }
        word(has, "material", lot.material());
        word(has, "colour", lot.colour());
        return piece(lot.id(), lot.item(), craft, has, classOf(lot), Optional.of(lot));
    }

    /** A piece in hand that lies in no drawer: the customer's own, not charged. */
    Piece inHand(String kind, Craft craft, Map<String, Value> has) {
        return piece("own", kind, craft, new LinkedHashMap<>(has), PieceClass.BLANK, Optional.empty());
    }

    private Piece piece(String id, String item, Craft craft, Map<String, Value> has, PieceClass of, Optional<Lot> lot) {
        boolean blank = of == PieceClass.BLANK && lot.isPresent();
        Map<String, String> usual = blank && !craft.usualBlank().isEmpty() ? craft.usualBlank() : craft.usual();
        Map<String, String> like = new HashMap<>();
        Set<String> assumed = new HashSet<>();
        usual.forEach((dimension, text) -> {
            if (has.containsKey(text)) {
                like.put(dimension, text);
            } else if (!has.containsKey(dimension) && !isDimension(craft, text)) {
                has.put(dimension, value(text, name -> null));
                assumed.add(dimension);
            }
        });
        has.keySet().forEach(like::remove);
        return new Piece(id, item, craft, has, like, assumed, of, lot);
    }

    /** A dimension that is not stated cannot stand for another. */
    private static boolean isDimension(Craft craft, String text) {
        return craft.moves().stream().anyMatch(m -> m.dimension().equals(text))
                || craft.fitting().tolerances().containsKey(text)
                || text.equals("thickness")
                || text.equals("length");
    }

    /** What a text stands for: a number, a dimension that is known, or a word. */
    static Value value(String text, Function<String, @Nullable Value> dimensions) {
        if (NUMBER.matcher(text).matches()) {
            return Value.of(Double.parseDouble(text));
        }
        Value other = dimensions.apply(text);
        return other == null ? new Value.Word(text) : other;
    }

    /** Names of the dimensions that a lot states. */
    static List<String> named(String dimensions) {
        return Arrays.stream(dimensions.split(";", -1))
                .filter(piece -> piece.indexOf('=') > 0)
                .map(piece -> piece.substring(0, piece.indexOf('=')).strip())
                .toList();
    }

    private Map<String, Value> stated(String dimensions) {
        Map<String, Value> has = new LinkedHashMap<>();
        for (String piece : dimensions.split(";", -1)) {
            int equals = piece.indexOf('=');
            if (equals > 0) {
                String name = piece.substring(0, equals).strip();
                String text = piece.substring(equals + 1).strip();
                // What cannot be read stays as it is written: one bad value must not hide the others.
                has.put(
                        name,
                        reader.dimension(text).found().map(v -> value(name, v)).orElse(new Value.Word(text)));
            }
        }
        return has;
    }

    private Value value(String name, DimensionValue value) {
        return switch (value) {
            case DimensionValue.Size(Measured size)
            when size.kind() == Measured.Kind.RANGE -> new Value.Word(size.toString());
            case DimensionValue.Size(Measured size) -> Value.of(size.nominal());
            case DimensionValue.Number number -> Value.of(number.value().doubleValue());
            case DimensionValue.Word(String text) -> name.equals("thread") ? thread(text) : new Value.Word(text);
        };
    }

    private Value thread(String text) {
        return new Value.Word(threads.form(text).map(Threads.Form::designation).orElse(text));
    }

    private static void word(Map<String, Value> has, String name, String text) {
        if (!text.isEmpty()) {
            has.putIfAbsent(name, new Value.Word(text));
        }
    }

    private static PieceClass classOf(Lot lot) {
        if (lot.state() == LotState.BLANK || lot.item().startsWith("sup-")) {
            return PieceClass.BLANK;
        }
        boolean make = !lot.fitsMakes().isEmpty() || !lot.fitsModels().isEmpty();
        if (lot.state() == LotState.NEW) {
            return make ? PieceClass.NEW_MAKE : PieceClass.NEW_COMMON;
        }
        return make ? PieceClass.SALVAGED_MAKE : PieceClass.SALVAGED_COMMON;
    }
}
