package hornbook.viewer.jobs;

import hornbook.shared.job.AfterCare;
import hornbook.shared.job.OnBench;
import hornbook.shared.job.Standing;
import hornbook.viewer.clock.Elapsed;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** The horns on the bench, each a broad tile; below, those that should come by again. */
final class BenchList extends ScrollPane {
    private final VBox list = new VBox();
    private final Consumer<String> open;
    private final List<BenchTile> tiles = new ArrayList<>();

    private Elapsed elapsed = Elapsed.of(List.of());
    private List<OnBench> drawn = List.of();
    private List<AfterCare.Due> due = List.of();
    private boolean drawnKnown;
    private String shown = "";

    BenchList(Consumer<String> open) {
        this.open = open;
        getStyleClass().add("bench-list");
        list.getStyleClass().add("links");
        setContent(list);
        setFitToWidth(true);
        setFocusTraversable(false);
    }

    void show(JobsView view) {
        if (drawnKnown != view.known() || !drawn.equals(view.bench()) || !due.equals(view.due())) {
            drawn = view.bench();
            due = view.due();
            drawnKnown = view.known();
            elapsed = Elapsed.of(drawn);
            draw(view);
        }
        String chosen = view.page() == null ? "" : view.page().card().id();
        tiles.forEach(tile -> tile.choose(tile.job().id().equals(chosen)));
        if (!chosen.equals(shown)) {
            shown = chosen;
            Platform.runLater(this::bringIntoView);
        }
        tick();
    }

    private void bringIntoView() {
        double over = list.getHeight() - getViewportBounds().getHeight();
        tiles.stream().filter(tile -> tile.job().id().equals(shown) && over > 0).forEach(tile -> {
            double top = tile.getBoundsInParent().getMinY();
            double end =
                    tile.getBoundsInParent().getMaxY() - getViewportBounds().getHeight();
            setVvalue(
                    Math.clamp(getVvalue(), Math.clamp(end / over, 0, 1), Math.clamp(Math.max(top, end) / over, 0, 1)));
        });
    }

    /** Sets the clocks on. */
    void tick() {
        tiles.forEach(tile -> tile.tick(elapsed));
    }

    Elapsed elapsed() {
        return elapsed;
    }

    private void draw(JobsView view) {
        tiles.clear();
        List<Node> nodes = new ArrayList<>();
        if (drawnKnown && drawn.isEmpty()) {
            nodes.add(Words.text("Nothing is on the bench. Press A to take a horn in.", "said"));
        }
        for (OnBench on : drawn) {
            BenchTile tile = new BenchTile(on, tiles.size() + 1, today(on.standing()), () -> open.accept(on.id()));
            tiles.add(tile);
            nodes.add(tile);
        }
        view.due().forEach(due -> {
            String words = due.job() + " was done " + due.done() + ": have its horn come by until " + due.until();
            Tile tile = new Tile(() -> open.accept(due.job()), Words.text(words, "quiet"));
            tile.getStyleClass().add("link");
            tile.setAccessibleText(words);
            nodes.add(tile);
        });
        list.getChildren().setAll(nodes);
    }

    private static LocalDate today(Standing standing) {
        return standing.asOf().toLocalDate();
    }
}
