package hornbook.shared.pads;

import hornbook.shared.shop.Lot;
import hornbook.shared.supply.Verdicts;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The trays of the shop, as far as they may be taken from. */
final class Trays {
    private final Millimetres sizes;
    private final Verdicts verdicts;
    private final boolean reserve;

    /** @param reserve may what is set aside be taken too? */
    Trays(Millimetres sizes, Verdicts verdicts, boolean reserve) {
        this.sizes = sizes;
        this.verdicts = verdicts;
        this.reserve = reserve;
    }

    /** Never a keepsake, nor goods that are to be avoided; what is in reserve only on asking. */
    List<Tray> of(Goods goods, Collection<Lot> lots) {
        Map<Tray.Batch, Tray> trays = new LinkedHashMap<>();
        for (Lot lot : lots) {
            if (goods.holds(lot) && !lot.keepsake() && !verdicts.avoided(lot)) {
                sizes.dimension(lot.dimensions(), "size")
                        .flatMap(HalfSize::exactly)
                        .ifPresent(size ->
                                trays.computeIfAbsent(batch(lot), Tray::new).add(size, lot, reserve || !lot.reserve()));
            }
        }
        return new ArrayList<>(trays.values().stream().filter(Tray::counted).toList());
    }

    private Tray.Batch batch(Lot lot) {
        BigDecimal thickness = sizes.dimension(lot.dimensions(), "thickness")
                .map(mm ->
                        mm.setScale(Math.max(1, mm.stripTrailingZeros().scale()), java.math.RoundingMode.UNNECESSARY))
                .orElse(null);
        return new Tray.Batch(lot.item(), lot.material(), lot.colour(), thickness);
    }
}
