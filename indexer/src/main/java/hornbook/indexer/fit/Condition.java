package hornbook.indexer.fit;

import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Supplier;
import hornbook.shared.supply.Verdicts;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What the books say is amiss with a lot: harmed, rusty, or goods this shop avoids. */
final class Condition {
    private static final Pattern HARMED =
            Pattern.compile("\\b(torn|bent|cracked|broken|chipped|worn|perished|spoiled|uneven)\\b");
    private static final String RUST = "rust";

    private final Verdicts verdicts;

    Condition(Collection<Supplier> suppliers) {
        verdicts = new Verdicts(suppliers);
    }

    /** Not to be taken while anything else will do. */
    boolean avoided(Lot lot) {
        return verdicts.avoided(lot);
    }

    boolean sound(Lot lot) {
        return amiss(lot).isEmpty();
    }

    /** For people; empty where nothing is known against it. */
    List<String> amiss(Lot lot) {
        List<String> amiss = new ArrayList<>();
        if (HARMED.matcher(lot.title().toLowerCase(Locale.ROOT)).find()) {
            amiss.add("its title says it is harmed: look before you begin");
        }
        if ((lot.title() + " " + lot.colour()).toLowerCase(Locale.ROOT).contains(RUST)) {
            amiss.add("rusty: derust it first, and leave it where the bearing surface is pitted");
        }
        Optional<String> avoid = verdicts.avoid(lot);
        avoid.ifPresent(amiss::add);
        return amiss;
    }
}
