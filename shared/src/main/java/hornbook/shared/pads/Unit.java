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

    // One thickness through a stack, within a tenth; usual pads are 3.8 to 4.4 (common practice).
    private static final BigDecimal WITHIN = new BigDecimal("0.1");
    private static final BigDecimal USUAL_FROM = new BigDecimal("3.8");
    private static final BigDecimal USUAL_TO = new BigDecimal("4.4");
    private static final BigDecimal USUAL = new BigDecimal("4.0");

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

    boolean fits(Goods goods, Tray tray) {
        BigDecimal has = tray.batch.thickness();
        if (goods == Goods.RESONATORS) {
            return true;
        }
        if (thickness != null) {
            return has != null && has.subtract(thickness).abs().compareTo(WITHIN) <= 0;
        }
        return has == null || (has.compareTo(USUAL_FROM) >= 0 && has.compareTo(USUAL_TO) <= 0);
    }

    /** How far a tray's thickness is from the one wanted; of equal trays the nearer is taken. */
    BigDecimal from(Tray tray) {
        BigDecimal has = tray.batch.thickness();
        BigDecimal wanted = thickness == null ? USUAL : thickness;
        return has == null ? USUAL : has.subtract(wanted).abs();
    }
}
