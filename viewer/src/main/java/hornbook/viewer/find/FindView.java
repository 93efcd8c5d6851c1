package hornbook.viewer.find;

import hornbook.indexer.search.Hit;
import hornbook.viewer.card.Card;
import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What the screen shows at one moment.
 *
 * @param text what was asked
 * @param hits in the order in which they stand, group by group
 * @param chosen place in {@code hits} of the one that Enter opens, -1 where there is none
 * @param card what is open
 * @param asOf set where the shop has been written in since the index was last in step
 * @param trouble what went wrong, in a sentence
 */
record FindView(
        String text,
        List<Hit> hits,
        int chosen,
        @Nullable Card card,
        @Nullable Instant asOf,
        @Nullable String trouble) {

    static final FindView NOTHING = new FindView("", List.of(), -1, null, null, null);

    /** The answer, its groups in the order of their best hits. */
    static FindView of(String text, List<Hit> hits, @Nullable Instant asOf, @Nullable Card card) {
        Map<Group, List<Hit>> groups =
                hits.stream().collect(Collectors.groupingBy(Group::of, LinkedHashMap::new, Collectors.toList()));
        List<Hit> sorted = groups.values().stream()
                .sorted(Comparator.comparingDouble(
                        (List<Hit> group) -> -group.getFirst().score()))
                .flatMap(List::stream)
                .toList();
        return new FindView(text, sorted, sorted.isEmpty() ? -1 : 0, card, asOf, null);
    }

    Optional<Hit> chosenHit() {
        return chosen < 0 ? Optional.empty() : Optional.of(hits.get(chosen));
    }

    FindView choosing(int hit) {
        return new FindView(text, hits, Math.clamp(hit, hits.isEmpty() ? -1 : 0, hits.size() - 1), card, asOf, trouble);
    }

    FindView opening(@Nullable Card opened) {
        return new FindView(text, hits, chosen, opened, asOf, null);
    }

    FindView troubled(String what) {
        return new FindView(text, hits, chosen, card, asOf, what);
    }
}
