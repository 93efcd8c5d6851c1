package hornbook.viewer.jobs;

import hornbook.indexer.search.Hit;
import hornbook.viewer.pick.Option;

/** What a search found, to choose from. */
final class HitOption {
    private HitOption() {}

    static Option of(Hit hit) {
        String there = hit.onHand() == null ? "" : hit.onHand() + " there  \u00b7  ";
        String drawer = hit.drawerLabel() == null ? "" : hit.drawerLabel() + "  \u00b7  ";
        return new Option(hit.id(), hit.title(), there + drawer + hit.id());
    }
}
