package hornbook.shared.restock;

import hornbook.shared.supply.Verdicts;
import java.util.Optional;

/** What to do about an article, and why, in one sentence. */
record Advice(int order, String why) {

    static Advice of(Standing standing, Verdicts verdicts) {
        String reason = String.join(
                "; ",
                stock(standing, verdicts),
                use(standing),
                standing.source().days());
        Optional<String> first = first(standing);
        int order = first.isPresent() ? 0 : standing.need().order();
        return new Advice(order, reason + ": " + first.orElse(order(standing, order)));
    }

    private static String stock(Standing standing, Verdicts verdicts) {
        StringBuilder text =
                new StringBuilder(there(standing, standing.article().uncounted(verdicts)));
        if (standing.demand().pieces() > 0) {
            text.append(", ").append(standing.demand().pieces()).append(" wanted");
            text.append(
                    standing.demand().jobs().isEmpty()
                            ? ""
                            : " by " + standing.demand().jobs());
        }
        standing.demand()
                .orders()
                .forEach(order -> text.append(
                        ", %d on order since %s (%s)".formatted(order.qty(), order.orderedOn(), order.orderRef())));
        return text.toString();
    }

    private static String there(Standing standing, int uncounted) {
        int onHand = standing.onHand();
        String apart = standing.source().avoid().isPresent() ? "to avoid, which do not count" : "in reserve";
        if (onHand == 0 && uncounted > 0) {
            return "only " + uncounted + " " + apart;
        }
        String there = standing.article()
                .byEye()
                .map(word -> "counted only as " + word)
                .orElse(onHand < 0 ? "the ledger says " + onHand : onHand == 0 ? "none left" : onHand + " left");
        return uncounted > 0 ? there + " and " + uncounted + " " + apart : there;
    }

    private static String use(Standing standing) {
        Use use = standing.use();
        if (use.times() == 0) {
            return "no use on record, so only what is wanted counts";
        }
        String text = "used %s in %s, last on %s"
                .formatted(
                        times(use.times()),
                        use.months().length == 1 ? "a month" : use.months().length + " months",
                        use.last());
        String how = standing.forecast().how();
        return how.isEmpty() ? text : text + " (" + how + ")";
    }

    private static String times(int times) {
        return times == 1 ? "once" : times == 2 ? "twice" : times + " times";
    }

    /** What has to be done before anything is ordered. */
    private static Optional<String> first(Standing standing) {
        if (standing.onHand() < 0) {
            return Optional.of("count it first");
        }
        if (standing.source().avoid().isPresent()) {
            return Optional.of("find another source first");
        }
        if (standing.article().byEye().isPresent() && standing.demand().pieces() == 0) {
            return Optional.of("look first");
        }
        if (standing.article().salvaged() && standing.source().supplier().isEmpty()) {
            return Optional.of("it came off a horn, watch for another");
        }
        return standing.need().due() ? Optional.empty() : Optional.of("wait for what is on its way");
    }

    private static String order(Standing standing, int order) {
        int pack = standing.need().pack();
        String packs = pack > 1 ? " (packs of " + pack + ")" : "";
        return "order " + order + packs
                + (standing.need().byCost() && order > pack ? ", which costs least to order and to keep" : "");
    }
}
