package hornbook.viewer.drawers;

import hornbook.shared.stock.CabinetPlan;
import hornbook.viewer.widget.Words;
import hornbook.viewer.window.Screen;
import hornbook.viewer.window.ScreenName;
import java.util.Objects;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Every cabinet of the shop, drawn as it stands. */
public final class DrawersScreen implements Screen {
    /** Where labels would get narrower than this, in pixels, an open drawer shows below the cabinet, not beside it. */
    private static final double NARROWEST_LABEL = 84;

    private final DrawersModel model;
    private final BorderPane root = new BorderPane();
    private final CabinetTabs tabs;
    private final Label about = new Label();
    private final Label trouble = new Label();
    private final ScrollPane stand = new ScrollPane();
    private final DrawerPanel panel;

    private @Nullable CabinetFront front;

    public DrawersScreen(DrawersModel model) {
        this.model = model;
        tabs = new CabinetTabs(model::choose);
        panel = new DrawerPanel(model::close);
        root.getStyleClass().add("drawers");
        root.getStylesheets()
                .add(Objects.requireNonNull(DrawersScreen.class.getResource("drawers.css"))
                        .toExternalForm());
        about.getStyleClass().add("about");
        about.setWrapText(true);
        trouble.getStyleClass().add("banner");
        trouble.setWrapText(true);
        root.setTop(new VBox(tabs, about, trouble));
        stand.setFitToWidth(true);
        stand.setFitToHeight(true);
        stand.getStyleClass().add("stand");
        root.setCenter(stand);
        model.onChange(this::draw);
    }

    @Override
    public ScreenName name() {
        return ScreenName.DRAWERS;
    }

    @Override
    public Node node() {
        return root;
    }

    @Override
    public void shown() {
        model.refresh();
    }

    @Override
    public boolean back() {
        return model.close();
    }

    private void draw(DrawersView view) {
        tabs.show(view);
        trouble.setText(view.trouble());
        shown(trouble, view.trouble() != null);
        view.cabinet().ifPresentOrElse(plan -> draw(plan, view), this::drawNone);
        drawOpen(view);
    }

    private void draw(CabinetPlan plan, DrawersView view) {
        CabinetFront now = front;
        if (now == null || !now.plan().equals(plan)) {
            now = new CabinetFront(plan, model::open);
            front = now;
            stand.setContent(now);
        }
        now.show(view);
        about.setText(Words.sentence(plan.where()) + " " + plan.notes());
    }

    private void drawNone() {
        front = null;
        stand.setContent(null);
        about.setText("No cabinet is entered yet.");
    }

    private void drawOpen(DrawersView view) {
        if (view.open() != null) {
            panel.show(view.open());
        }
        boolean below = view.cabinet().map(this::wantsPanelBelow).orElse(false);
        boolean open = view.open() != null;
        shown(about, !open);
        root.setRight(open && !below ? panel : null);
        root.setBottom(open && below ? panel : null);
        panel.getStyleClass().removeAll("beside", "below");
        panel.getStyleClass().add(below ? "below" : "beside");
        if (front != null && open) {
            Platform.runLater(front::showPulled);
        }
    }

    private boolean wantsPanelBelow(CabinetPlan plan) {
        return root.getWidth() - panel.prefWidth(-1) < plan.columns() * NARROWEST_LABEL;
    }

    private static void shown(Node node, boolean yes) {
        node.setVisible(yes);
        node.setManaged(yes);
    }
}
