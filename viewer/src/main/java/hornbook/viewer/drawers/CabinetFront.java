package hornbook.viewer.drawers;

import hornbook.shared.stock.CabinetPlan;
import hornbook.shared.stock.DrawerFront;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.RowConstraints;
import org.jspecify.annotations.Nullable;

/** One cabinet drawn to its rows and columns. Arrow keys go from drawer to drawer. */
final class CabinetFront extends GridPane {
    /** Labels in narrower drawers need several lines. */
    private static final int MOST_COLUMNS_FOR_ONE_LINE = 5;

    private final CabinetPlan plan;
    private final Map<Spot, DrawerButton> buttons = new HashMap<>();

    private @Nullable DrawerButton last;

    private record Spot(int row, int column) {}

    CabinetFront(CabinetPlan plan, Consumer<String> open) {
        this.plan = plan;
        getStyleClass().addAll("cabinet-front", plan.columns() > MOST_COLUMNS_FOR_ONE_LINE ? "narrow" : "broad");
        IntStream.range(0, plan.columns()).forEach(i -> getColumnConstraints().add(column()));
        IntStream.range(0, plan.rows()).forEach(i -> getRowConstraints().add(row()));
        for (int row = 1; row <= plan.rows(); row++) {
            for (int column = 1; column <= plan.columns(); column++) {
                add(gap(), column - 1, row - 1);
            }
        }
        plan.drawers().forEach(front -> place(front, open));
        addEventFilter(KeyEvent.KEY_PRESSED, this::walk);
    }

    CabinetPlan plan() {
        return plan;
    }

    private ColumnConstraints column() {
        ColumnConstraints same = new ColumnConstraints();
        same.setPercentWidth(100.0 / plan.columns());
        same.setHgrow(Priority.ALWAYS);
        return same;
    }

    private static RowConstraints row() {
        RowConstraints same = new RowConstraints();
        same.setVgrow(Priority.ALWAYS);
        same.setFillHeight(true);
        return same;
    }

    /** The carcass shows where there is no drawer. */
    private static Region gap() {
        Region gap = new Region();
        gap.getStyleClass().add("gap");
        return gap;
    }

    private void place(DrawerFront front, Consumer<String> open) {
        DrawerButton button = new DrawerButton(front);
        button.setOnAction(pressed -> open.accept(front.id()));
        button.focusedProperty().subscribe(focused -> last = focused ? button : last);
        buttons.put(new Spot(front.row(), front.column()), button);
        add(button, front.column() - 1, front.row() - 1);
    }

    void show(DrawersView view) {
        String pulled = view.open() == null ? "" : view.open();
        buttons.values()
                .forEach(button -> button.show(
                        view.lit().contains(button.front().id()),
                        button.front().id().equals(pulled)));
    }

    /** Gives the keyboard to a drawer, if it is one of these. */
    void focus(String drawer) {
        buttons.values().stream()
                .filter(button -> button.front().id().equals(drawer))
                .forEach(DrawerButton::requestFocus);
    }

    /** Gives the keyboard to the drawer that had it last, at first the one at the top left. */
    void takeKeyboard() {
        DrawerButton to = last;
        if (to == null) {
            to = buttons.values().stream()
                    .min(Comparator.comparingInt(
                                    (DrawerButton each) -> each.front().row())
                            .thenComparingInt(each -> each.front().column()))
                    .orElse(null);
        }
        if (to == null) {
            requestFocus();
        } else {
            to.requestFocus();
        }
    }

    /** Scrolls so far that the pulled drawer is in view. */
    void showPulled() {
        if (!(getParent() instanceof Region viewport) || getHeight() <= viewport.getHeight()) {
            return;
        }
        buttons.values().stream().filter(DrawerButton::isPulled).findFirst().ifPresent(button -> {
            double middle = button.getBoundsInParent().getCenterY() - viewport.getHeight() / 2;
            scroll().setVvalue(Math.clamp(middle / (getHeight() - viewport.getHeight()), 0, 1));
        });
    }

    private ScrollPane scroll() {
        Node above = getParent();
        while (!(above instanceof ScrollPane pane)) {
            above = above.getParent();
        }
        return pane;
    }

    private void walk(KeyEvent key) {
        if (!(getScene().getFocusOwner() instanceof DrawerButton from) || key.isAltDown() || key.isShortcutDown()) {
            return;
        }
        switch (key.getCode()) {
            case UP -> step(from, -1, 0);
            case DOWN -> step(from, 1, 0);
            case LEFT -> step(from, 0, -1);
            case RIGHT -> step(from, 0, 1);
            default -> {
                return;
            }
        }
        key.consume();
    }

    private void step(DrawerButton from, int rows, int columns) {
        int row = from.front().row() + rows;
        int column = from.front().column() + columns;
        while (row >= 1 && row <= plan.rows() && column >= 1 && column <= plan.columns()) {
            DrawerButton to = buttons.get(new Spot(row, column));
            if (to != null) {
                to.requestFocus();
                return;
            }
            row += rows;
            column += columns;
        }
    }
}
