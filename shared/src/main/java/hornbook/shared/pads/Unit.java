package hornbook.shared.pads;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Cups of one horn that must come from one batch: a stack, or a cup by itself. Of resonators the whole horn, so that a
 * set stays whole where it can.
 *
 * @param thickness the middle of those measured, null where none was
 * @param ownLook may it look other than the rest of the horn? Octave pads do
 */
record Unit(List<Integer> cups, @Nullable BigDecimal thickness, boolean ownLook) {
    private static final Set<String> UPPER = Set.of("small-c", "b", "bis", "a", "g");
    private static final Set<String> LOWER = Set.of("fs", "f", "e", "d");

    /** The units of one horn. @param cups numbers into {@code all} */
    static List<Unit> of(Goods goods, List<Integer> cups, List<Cup> all) {
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (int cup : cups) {
            groups.computeIfAbsent(goods == Goods.PADS ? group(all.get(cup)) : "", g -> new ArrayList<>())
                    .add(cup);
        }
        List<Unit> units = new ArrayList<>();
        groups.forEach((name, group) ->
                units.add(new Unit(group, goods == Goods.PADS ? middle(group, all) : null, name.startsWith("oct"))));
        return units;
    }

    private static String group(Cup cup) {
        String named = cup.cup().toLowerCase(Locale.ROOT);
        String name = named.startsWith("cup-") ? named.substring("cup-".length()) : named;
        if (UPPER.contains(name)) {
            return "upper stack";
        }
        return LOWER.contains(name) ? "lower stack" : name;
    }

    private static @Nullable BigDecimal middle(List<Integer> cups, List<Cup> all) {
        List<BigDecimal> given = new ArrayList<>();
        for (int cup : cups) {
            BigDecimal thickness = all.get(cup).thickness();
            if (thickness != null) {
                given.add(thickness);
            }
        }
        given.sort(null);
        return given.isEmpty() ? null : given.get(given.size() / 2);
    }
}
