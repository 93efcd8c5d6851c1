package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Model;
import hornbook.shared.shop.Horn;
import java.util.List;
import java.util.Map;

/**
 * What this shop's own horns teach.
 *
 * @param counts horns in the books by model
 * @param unplaced horns that no entry describes
 * @param looks at each horn, by its id, latest of each trait
 * @param sure horns whose model is sure, that taught something since the entry was written
 * @param tests horns confirmed by something other than looking up their traits
 */
record Experience(
        Map<String, Integer> counts, int unplaced, Map<String, List<Seen>> looks, List<Horn> sure, List<Horn> tests) {
    /** No books. */
    static final Experience NONE = new Experience(Map.of(), 0, Map.of(), List.of(), List.of());

    /** The word in a horn's model for one that no entry describes. */
    static final String UNLISTED = "unlisted";

    Experience {
        counts = Map.copyOf(counts);
        looks = Map.copyOf(looks);
        sure = List.copyOf(sure);
        tests = List.copyOf(tests);
    }

    /** Horns of a model that this shop, or the one its entry came from, has had. */
    int seen(Model model) {
        return Math.max(model.hornsSeen(), counts.getOrDefault(model.id(), 0));
    }

    List<Seen> looks(String horn) {
        return looks.getOrDefault(horn, List.of());
    }
}
