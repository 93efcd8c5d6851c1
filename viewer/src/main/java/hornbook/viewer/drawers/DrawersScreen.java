package hornbook.viewer.drawers;

import hornbook.shared.stock.CabinetPlan;
import hornbook.viewer.ask.AskForm;
import hornbook.viewer.hand.HandModel;
import hornbook.viewer.hand.OpenDrawer;
import hornbook.viewer.tools.ToolList;
import hornbook.viewer.tools.ToolsModel;
import hornbook.viewer.widget.Words;
import hornbook.viewer.window.Screen;
import hornbook.viewer.window.ScreenName;
import java.util.List;
import java.util.Objects;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Every cabinet of the shop, drawn as it stands. */
public final class DrawersScreen implements Screen {
    /** Where labels would get narrower than this, in pixels, an open drawer shows below the cabinet, not beside it. */
    private static final double NARROWEST_LABEL = 52;

    private final DrawersModel model;
    private final DeskModel desk;
    private final ToolsModel tools;
    private final ToolList toolList;
    private final Runnable bringIn;
    private final AskForm form;
    private final HBox walk = new HBox();
    private final Label said = Words.text("", "found");
    private final BorderPane root = new BorderPane();
    private final CabinetTabs tabs;
    private final Attention attention;
    private final Label about = new Label();
    private final Label trouble = new Label();
    private final ScrollPane stand = new ScrollPane();
    private final OpenDrawer panel;

    private @Nullable CabinetFront front;
    private String pulled = "";

    /**
     * @param hand what is done to the open drawer
     * @param desk what is set up before the cabinets
     * @param tools the tools of the shop
     * @param bringIn leads to where lists are brought in
     */
    public DrawersScreen(DrawersModel model, HandModel hand, DeskModel desk, ToolsModel tools, Runnable bringIn) {
        this.model = model;
        this.desk = desk;
        this.tools = tools;
        this.bringIn = bringIn;
        toolList = new ToolList(tools, model::open);
        tabs = new CabinetTabs(model::choose);
        attention = new Attention(model, desk);
        form = new AskForm(desk::answer, desk::leave);
        panel = new OpenDrawer(hand, model::close, tool -> {
            tools.choose(tool);
            model.choose(DrawersView.TOOLS);
        });
        root.getStyleClass().add("drawers");
        root.getStylesheets()
                .add(Objects.requireNonNull(DrawersScreen.class.getResource("drawers.css"))
                        .toExternalForm());
        about.getStyleClass().add("about");
        about.setWrapText(true);
        trouble.getStyleClass().add("banner");
        trouble.setWrapText(true);
        walk.getStyleClass().add("line");
        Button skip = new Button("Leave this one; next  Page Down");
        skip.setId("skip");
        skip.setOnAction(pressed -> model.next());
        walk.getChildren().addAll(Words.text("Looking through, drawer by drawer.", "found"), skip);
        root.setTop(new VBox(tabs, about, attention, walk, trouble, said, form));
        stand.setFitToWidth(true);
        stand.setFitToHeight(true);
        stand.getStyleClass().add("stand");
        root.setCenter(stand);
        root.addEventHandler(KeyEvent.KEY_TYPED, this::typed);
        root.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        model.onLabelled(desk::layAside);
        model.onChange(this::draw);
        desk.onChange(this::draw);
        root.widthProperty().subscribe(() -> drawOpen(model.view()));
    }

    private void draw(DeskView view) {
        form.show(view.ask());
        said.setText(view.said() == null ? "" : view.said());
        shown(said, view.said() != null);
        model.view()
                .cabinet()
                .ifPresent(plan -> attention.show(plan, model.view().lit(), view.toPrint()));
    }

    private void pressed(KeyEvent key) {
        if (key.getCode() == KeyCode.PAGE_DOWN && model.view().looking()) {
            model.next();
            key.consume();
        }
    }

    private void typed(KeyEvent key) {
        if ("g".equalsIgnoreCase(key.getCharacter()) && !(key.getTarget() instanceof TextInputControl)) {
            model.lookThrough();
            key.consume();
        }
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
        tools.refresh();
    }

    @Override
    public void takeKeyboard() {
        CabinetFront now = front;
        if (model.view().open() != null) {
            panel.takeKeyboard();
        } else if (now != null) {
            now.takeKeyboard();
        } else {
            root.requestFocus();
        }
    }

    @Override
    public boolean back() {
        return desk.leave() || model.back() || (model.view().chosen().equals(DrawersView.TOOLS) && tools.back());
    }

    private void draw(DrawersView view) {
        tabs.show(view);
        trouble.setText(view.trouble());
        shown(trouble, view.trouble() != null);
        if (view.chosen().equals(DrawersView.PLACES)) {
            drawPlaces(view);
        } else if (view.chosen().equals(DrawersView.TOOLS)) {
            drawTools();
        } else {
            view.cabinet().ifPresentOrElse(plan -> draw(plan, view), this::drawNone);
        }
        shown(walk, view.looking());
        drawOpen(view);
        if (root.isFocused()) {
            // It was given to the screen before there was a cabinet to give it on to.
            takeKeyboard();
        }
    }

    private void draw(CabinetPlan plan, DrawersView view) {
        CabinetFront now = front;
        if (now == null || !now.plan().equals(plan)) {
            now = new CabinetFront(plan, model::open);
            front = now;
            stand.setContent(now);
        }
        attention.show(plan, view.lit(), desk.view().toPrint());
        now.show(view);
        about.setText(Words.sentence(plan.where()) + " " + plan.notes());
        shown(attention, view.open() == null);
    }

    private void drawPlaces(DrawersView view) {
        front = null;
        stand.setContent(new PlacesFront(view.shop().places(), model::open, () -> desk.place(model::refresh)));
        about.setText("What is in no drawer: hooks, shelves, tubes, horns kept for parts.");
        shown(attention, false);
    }

    private void drawTools() {
        front = null;
        stand.setContent(toolList);
        about.setText("Where each tool is, and what its set lacks.");
        shown(attention, false);
    }

    private void drawNone() {
        front = null;
        stand.setContent(!model.view().known() ? null : new BareShop(() -> desk.cabinet(model::newest), bringIn));
        about.setText("");
        shown(attention, false);
    }

    private void drawOpen(DrawersView view) {
        boolean open = view.open() != null;
        boolean below = view.cabinet().map(this::wantsPanelBelow).orElse(false);
        shown(about, !open);
        place(open && !below, open && below);
        panel.getStyleClass().removeAll("beside", "below");
        panel.getStyleClass().add(below ? "below" : "beside");
        CabinetFront now = front;
        if (now != null) {
            stand(now, open, open && !below);
        }
        pulled = view.open() == null ? "" : view.open();
    }

    private void stand(CabinetFront cabinet, boolean open, boolean squeezed) {
        cabinet.getStyleClass().remove("squeezed");
        cabinet.getStyleClass().addAll(squeezed ? List.of("squeezed") : List.of());
        if (open) {
            Platform.runLater(cabinet::showPulled);
        } else if (!pulled.isEmpty()) {
            cabinet.focus(pulled);
        }
    }

    /** First away, then there: a node cannot be at two places, not even for a moment. */
    private void place(boolean beside, boolean below) {
        if (!beside) {
            root.setRight(null);
        }
        if (!below) {
            root.setBottom(null);
        }
        if (beside) {
            root.setRight(panel);
        }
        if (below) {
            root.setBottom(panel);
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
