package hornbook.viewer.hornmap;

import hornbook.catalogue.picture.Picture;
import hornbook.viewer.widget.PictureView;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.css.PseudoClass;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;

/**
 * The horn with its cups, each named beside it by a broad tile and a line. Serves any screen that has something to say
 * cup by cup.
 */
public final class HornDrawing extends Region {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final double TILE_SHARE = 0.33;
    private static final double LEAST_TILE = 34;
    private static final double MOST_TILE = 52;
    private static final double GAP = 3;

    private final PictureView picture;
    private final Consumer<String> choose;
    private final Map<String, CupTile> tiles = new HashMap<>();
    private final Map<String, Line> lines = new HashMap<>();

    private List<String> left = List.of();
    private List<String> right = List.of();

    /** @param choose told the id of the cup that was pressed */
    public HornDrawing(Picture horn, Consumer<String> choose) {
        this.picture = new PictureView(horn);
        this.choose = choose;
        getStyleClass().add("horn-drawing");
        getChildren().add(picture);
    }

    /** Shows these cups and no others, one of them chosen; an id that is none chooses nothing. */
    public void show(List<CupMark> marks, String chosen) {
        if (!tiles.keySet().equals(marks.stream().map(CupMark::cup).collect(Collectors.toSet()))) {
            rebuild(marks);
        }
        marks.forEach(mark -> {
            boolean is = mark.cup().equals(chosen);
            Objects.requireNonNull(tiles.get(mark.cup())).show(mark, is);
            Objects.requireNonNull(lines.get(mark.cup())).pseudoClassStateChanged(CHOSEN, is);
            shape(mark.cup()).pseudoClassStateChanged(CHOSEN, is);
        });
    }

    private void rebuild(List<CupMark> marks) {
        tiles.clear();
        lines.clear();
        getChildren().setAll(picture);
        picture.lookupAll(".there").forEach(shape -> shape.getStyleClass().remove("there"));
        List<Sides.At> at = new ArrayList<>();
        for (CupMark mark : marks) {
            Bounds bounds = shape(mark.cup()).getBoundsInLocal();
            at.add(new Sides.At(mark.cup(), bounds.getCenterX(), bounds.getCenterY()));
            shape(mark.cup()).getStyleClass().add("there");
            tiles.put(mark.cup(), new CupTile(mark.cup(), () -> choose.accept(mark.cup())));
            Line line = new Line();
            line.getStyleClass().add("leader");
            line.setMouseTransparent(true);
            lines.put(mark.cup(), line);
        }
        Sides.Split split = Sides.of(at);
        left = split.left();
        right = split.right();
        getChildren().addAll(lines.values());
        getChildren().addAll(tiles.values());
    }

    private Node shape(String cup) {
        Node shape = picture.lookup("#" + cup);
        if (shape == null) {
            throw new IllegalArgumentException("the drawing has no " + cup);
        }
        return shape;
    }

    @Override
    protected void layoutChildren() {
        double tile = Math.min(getWidth() * TILE_SHARE, fontSize() * 13);
        picture.resizeRelocate(tile + fontSize(), 0, getWidth() - 2 * (tile + fontSize()), getHeight());
        picture.layout();
        column(left, 0, tile, tile);
        column(right, getWidth() - tile, tile, getWidth() - tile);
    }

    private double fontSize() {
        return tiles.values().stream()
                .findFirst()
                .map(t -> ((Label) t.getChildren().getFirst()).getFont().getSize())
                .orElse(16.0);
    }

    private void column(List<String> cups, double x, double width, double end) {
        if (cups.isEmpty()) {
            return;
        }
        double each = Math.clamp(getHeight() / cups.size() - GAP, LEAST_TILE, MOST_TILE);
        double over = Math.max(0, getHeight() - cups.size() * (each + GAP)) / cups.size();
        double y = over / 2;
        for (String cup : cups) {
            Objects.requireNonNull(tiles.get(cup)).resizeRelocate(x, y, width, each);
            Bounds at = sceneToLocal(shape(cup).localToScene(shape(cup).getBoundsInLocal()));
            Line line = Objects.requireNonNull(lines.get(cup));
            line.setStartX(end);
            line.setStartY(y + each / 2);
            line.setEndX(at.getCenterX() + (end < at.getCenterX() ? -1 : 1) * at.getWidth() / 2);
            line.setEndY(at.getCenterY());
            y += each + GAP + over;
        }
    }
}
