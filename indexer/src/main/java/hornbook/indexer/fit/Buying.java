package hornbook.indexer.fit;

import java.util.ArrayList;
import java.util.List;

/** What would serve where nothing on hand will do. */
final class Buying {
    private final Asked asked;

    Buying(Asked asked, ShopRack rack, Threads threads, Minutes minutes) {
        this.asked = asked;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(asked.kind().title() + ": " + String.join(", ", asked.shown()));
        return lines;
    }
}
