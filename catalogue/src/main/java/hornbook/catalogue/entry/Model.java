package hornbook.catalogue.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Make, pattern, era and instrument: what horns of one sort are like.
 *
 * @param make id of the make
 * @param pattern the maker's name for it
 * @param instruments values of `family-member`
 * @param years when it was made
 * @param serialAnchors numbers believed reached in a year, ascending
 * @param serialRanges runs of numbers
 * @param serialLetters letter before or after the number (empty text: none) and its share; shares add up to 1
 * @param traits what is known of each trait, by trait id
 * @param traitsMany chance that each value of a `many` trait is there
 * @param absent traits that do not apply to it
 * @param threads designation by use (pivot, hinge-rod, neck-screw, guard-screw …)
 * @param padSet pad size by cup, mm
 * @param keyHeights opening by cup, mm
 * @param quirksKnown ids of quirks seen on it
 * @param hornsSeen horns of it this shop has had
 * @param map what each key turns on, as measured
 * @param takingDown order of taking down, as it went
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Model(
        String id,
        String make,
        String title,
        String pattern,
        List<String> instruments,
        @Nullable Years years,
        List<SerialAnchor> serialAnchors,
        List<SerialRange> serialRanges,
        Map<String, Double> serialLetters,
        Map<String, Distribution> traits,
        Map<String, Map<String, Double>> traitsMany,
        List<String> absent,
        Map<String, String> threads,
        Map<String, Double> padSet,
        Map<String, Double> keyHeights,
        List<String> quirksKnown,
        @Nullable String notes,
        int hornsSeen,
        List<KeyMap> map,
        List<TakingDown> takingDown,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public Model {
        instruments = List.copyOf(instruments);
        serialAnchors = List.copyOf(serialAnchors);
        serialRanges = List.copyOf(serialRanges);
        serialLetters = Ordered.copy(serialLetters);
        traits = Ordered.copy(traits);
        traitsMany = Ordered.copy(traitsMany);
        absent = List.copyOf(absent);
        threads = Ordered.copy(threads);
        padSet = Ordered.copy(padSet);
        keyHeights = Ordered.copy(keyHeights);
        quirksKnown = List.copyOf(quirksKnown);
        map = List.copyOf(map);
        takingDown = List.copyOf(takingDown);
    }

    /** The same model with another map and order of taking down. */
    public Model with(List<KeyMap> keys, List<TakingDown> order) {
        return new Model(
                id,
                make,
                title,
                pattern,
                instruments,
                years,
                serialAnchors,
                serialRanges,
                serialLetters,
                traits,
                traitsMany,
                absent,
                threads,
                padSet,
                keyHeights,
                quirksKnown,
                notes,
                hornsSeen,
                keys,
                order,
                source,
                sureness);
    }

    /** The same model with another pad set and other openings. */
    public Model with(Map<String, Double> pads, Map<String, Double> heights) {
        return new Model(
                id,
                make,
                title,
                pattern,
                instruments,
                years,
                serialAnchors,
                serialRanges,
                serialLetters,
                traits,
                traitsMany,
                absent,
                threads,
                pads,
                heights,
                quirksKnown,
                notes,
                hornsSeen,
                map,
                takingDown,
                source,
                sureness);
    }

    /** Shares over the values of a `one` trait, where stated. */
    public Optional<Shares> shares(String trait) {
        return traits.get(trait) instanceof Shares shares ? Optional.of(shares) : Optional.empty();
    }

    /** Mean and spread of a number trait, where stated. */
    public Optional<Normal> normal(String trait) {
        return traits.get(trait) instanceof Normal normal ? Optional.of(normal) : Optional.empty();
    }

    static Model from(Fields in) {
        return new Model(
                in.text("id"),
                in.text("make"),
                in.text("title"),
                in.text("pattern"),
                in.texts("instruments"),
                in.optional("years", Years::from),
                in.list("serial_anchors", SerialAnchor::from),
                in.list("serial_ranges", SerialRange::from),
                in.numbers("serial_letters"),
                in.byName("traits", Distribution::from),
                in.byName("traits_many", Fields::numbers),
                in.texts("absent"),
                in.textByName("threads"),
                in.numbers("pad_set"),
                in.numbers("key_heights"),
                in.texts("quirks_known"),
                in.optionalText("notes"),
                in.whole("horns_seen"),
                in.list("map", KeyMap::from),
                in.list("taking_down", TakingDown::from),
                in.text("source"),
                in.text("sureness"));
    }
}
