package hornbook.indexer.search;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A query as read.
 *
 * @param units what it says
 * @param words how many words of it count
 * @param past whether it asks for jobs done before
 * @param named words and terms in it, each of which may have an entry as a word
 */
record Plan(List<Unit> units, int words, boolean past, List<String> named) {
    Plan {
        units = List.copyOf(units);
        named = List.copyOf(named);
    }

    /** Ids of the parts and supplies it names; what a longer term covers is not named. */
    Set<String> things() {
        return things(outermost().toList());
    }

    /** As {@link #things}, only such as are named by terms of several words. */
    Set<String> thingsInFull() {
        return things(outermost().filter(unit -> unit.sort() == Unit.Sort.TERM).toList());
    }

    /** Terms of several words as typed. */
    List<String> terms() {
        return outermost()
                .filter(unit -> unit.sort() == Unit.Sort.TERM)
                .map(Unit::said)
                .toList();
    }

    private static Set<String> things(List<Unit> units) {
        Set<String> things = new HashSet<>();
        units.forEach(unit -> unit.ways().forEach(way -> way.thing().ifPresent(things::add)));
        return things;
    }

    /** Single words and numbers that tell something, as typed. */
    List<Unit> telling() {
        return units.stream()
                .filter(unit -> unit.sort() == Unit.Sort.WORD || unit.sort() == Unit.Sort.NUMBER)
                .filter(unit -> !unit.faint())
                .toList();
    }

    private Stream<Unit> outermost() {
        return units.stream()
                .filter(unit -> unit.sort() != Unit.Sort.PAIR)
                .filter(unit ->
                        units.stream().noneMatch(other -> other.sort() == Unit.Sort.TERM && other.covers(unit)));
    }
}
