package hornbook.viewer.find;

import hornbook.indexer.search.Hit;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The hits under their groups' headings. */
final class HitList extends ScrollPane {
    private final VBox list = new VBox();
    private final IntConsumer open;
    private final List<HitRow> rows = new ArrayList<>();

    private List<Hit> drawn = List.of();

    /** @param open told the place of the hit that was pressed */
    HitList(IntConsumer open) {
        this.open = open;
        list.getStyleClass().add("hit-list");
        setContent(list);
        setFitToWidth(true);
        setFocusTraversable(false);
        getStyleClass().add("hits");
    }

    void show(FindView view) {
        if (!drawn.equals(view.hits())) {
            drawn = view.hits();
            draw();
            setVvalue(0);
        }
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).show(i == view.chosen());
        }
        if (view.chosen() >= 0) {
            bringIntoView(rows.get(view.chosen()));
        }
    }

    private void draw() {
        rows.clear();
        List<Node> nodes = new ArrayList<>();
        @Nullable Group under = null;
        for (Hit hit : drawn) {
            Group group = Group.of(hit);
            if (group != under) {
                nodes.add(Words.text(group.title(), "group"));
                under = group;
            }
            int place = rows.size();
            HitRow row = new HitRow(hit, () -> open.accept(place));
            rows.add(row);
            nodes.add(row);
        }
        list.getChildren().setAll(nodes);
    }

    private void bringIntoView(HitRow row) {
        layout();
        Bounds at = row.getBoundsInParent();
        double room = getViewportBounds().getHeight();
        double over = list.getHeight() - room;
        if (over <= 0) {
            return;
        }
        double top = getVvalue() * over;
        if (at.getMinY() < top) {
            setVvalue(Math.clamp(at.getMinY() / over, 0, 1));
        } else if (at.getMaxY() > top + room) {
            setVvalue(Math.clamp((at.getMaxY() - room) / over, 0, 1));
        }
    }
}
