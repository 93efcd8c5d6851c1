package hornbook.shared.pads;

import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import java.math.BigDecimal;
import java.util.Optional;

/** What is to be put in: pads by the cup, or resonators by the rim. */
enum Goods {
    PADS("pad"),
    RESONATORS("resonator");

    /** The resonator is this much under the rim's inside: 2 to 4, and never nearer than 1 all round (common practice). */
    private static final BigDecimal CLEAR_OF_RIM = BigDecimal.valueOf(3);

    final String word;

    Goods(String word) {
        this.word = word;
    }

    /** The diameter that decides its size, mm. */
    Optional<BigDecimal> measure(Cup cup) {
        if (this == PADS) {
            return Optional.of(cup.diameter());
        }
        return Optional.ofNullable(cup.rim()).map(rim -> rim.subtract(CLEAR_OF_RIM));
    }

    /** Is a lot of these goods? Pads that were in a horn are not put in again; resonators are. */
    boolean holds(Lot lot) {
        String item = lot.item();
        return switch (this) {
            case PADS -> item.startsWith("sup-pad-") && lot.state() == LotState.NEW;
            case RESONATORS ->
                (item.startsWith("sup-reso-") || item.equals("part-reso-disc")) && lot.state() != LotState.BLANK;
        };
    }
}
