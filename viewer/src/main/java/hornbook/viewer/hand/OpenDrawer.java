package hornbook.viewer.hand;

import hornbook.shared.stock.DrawerCard;
import hornbook.shared.stock.LotLine;
import hornbook.shared.stock.ToolLine;
import hornbook.viewer.ask.AskForm;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** An open drawer: its label against what was found in it, what lies there, and what hands can do with it. */
public final class OpenDrawer extends VBox {
    private final HandModel model;
    private final Consumer<String> openTool;
    private final VBox inside = new VBox();
    private final ScrollPane scroll = new ScrollPane(inside);
    private final Label label = Words.text("", "panel-label");
    private final Label where = Words.text("", "where");
    private final Label trouble = Words.text("", "stop");
    private final AskForm form;
    private final List<LotTile> tiles = new ArrayList<>();

    private String shown = "";
    private boolean asking;

    /**
     * @param close pushes the drawer in
     * @param openTool shows a tool and the members of its set
     */
    public OpenDrawer(HandModel model, Runnable close, Consumer<String> openTool) {
        this.model = model;
        this.openTool = openTool;
        this.form = new AskForm(model::answer, model::leave);
        getStyleClass().add("drawer-panel");
        setFocusTraversable(true);
        Button shut = new Button("Push in");
        shut.setAccessibleHelp("Esc");
        shut.setId("push-in");
        shut.setMinWidth(Region.USE_PREF_SIZE);
        shut.setFocusTraversable(false);
        shut.setOnAction(pressed -> close.run());
        VBox named = new VBox(label, where);
        HBox.setHgrow(named, Priority.ALWAYS);
        HBox head = new HBox(named, shut);
        head.getStyleClass().add("panel-head");
        inside.getStyleClass().add("inside");
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(head, trouble, scroll, form);
        addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        model.onChange(this::draw);
    }

    private void draw(HandView view) {
        DrawerCard card = view.card();
        String why = view.trouble();
        trouble.setText(why == null ? "" : why);
        shown(trouble, why != null);
        if (card != null) {
            draw(card, view);
        }
        form.show(view.ask());
        boolean other = card != null && !card.id().equals(shown);
        boolean answered = asking && view.ask() == null;
        boolean asked = !asking && view.ask() != null;
        shown = card == null ? "" : card.id();
        asking = view.ask() != null;
        if (card != null && !asking && (other || answered)) {
            Platform.runLater(this::focusLot);
        }
        if (other) {
            scroll.setVvalue(0);
        }
        if (asked || (other && asking)) {
            Platform.runLater(this::lotsAtTheTop);
        }
    }

    /** A question leaves little room above it: what lies there is worth more of it than what was said of it. */
    private void lotsAtTheTop() {
        applyCss();
        layout();
        double over = inside.getHeight() - scroll.getViewportBounds().getHeight();
        int first = Math.max(0, model.view().chosen());
        if (over > 0 && first < tiles.size()) {
            scroll.setVvalue(Math.clamp(tiles.get(first).getBoundsInParent().getMinY() / over, 0, 1));
        }
    }

    private void draw(DrawerCard card, HandView view) {
        boolean inList = tiles.stream().anyMatch(tile -> tile.lookup(".tile:focused") != null);
        label.setText(card.label().isBlank() ? "no label" : card.label());
        where.setText(card.where() + "  \u00b7  " + card.id());
        inside.getChildren().clear();
        tiles.clear();
        heed(card, view.proposal());
        add(card.contents().isBlank() || card.labelState() == null ? "" : "Found in it: " + card.contents(), "found");
        add(card.lastLookedThrough() == null ? "" : "Looked through " + card.lastLookedThrough(), "quiet");
        add(card.note().isBlank() ? "" : Words.sentence(card.note()), "note");
        for (int i = 0; i < card.lots().size(); i++) {
            add(card.lots().get(i), i == view.chosen());
        }
        card.tools().forEach(this::add);
        if (card.lots().isEmpty() && card.tools().isEmpty()) {
            add("Nothing lies here.", "found");
        }
        inside.getChildren().add(acts(card));
        card.outOfUse().forEach(this::addRetired);
        if (inList) {
            focusLot();
        }
    }

    /** The drawer that says something else than what is in it is offered to be put right. */
    private void heed(DrawerCard card, String proposal) {
        add(card.heed() == null ? "" : Words.sentence(card.heed()), "banner");
        if (!proposal.isBlank()) {
            Button right = new Button("Put the label right: \u201c" + proposal + "\u201d  L");
            right.setWrapText(true);
            right.setId("put-right");
            right.setFocusTraversable(false);
            right.setOnAction(pressed -> model.begin(Act.LABEL));
            inside.getChildren().add(right);
        }
    }

    private void add(LotLine lot, boolean chosen) {
        LotTile tile = new LotTile(lot, chosen, () -> model.choose(lot.id()), model::begin);
        tiles.add(tile);
        inside.getChildren().add(tile);
    }

    private void add(ToolLine tool) {
        String state = tool.state().equals("good") ? "" : " (" + tool.state() + ")";
        Tile tile = new Tile(
                () -> openTool.accept(tool.id()),
                new VBox(Words.text("Tool: " + tool.title() + state, "tool-row"), Words.text(tool.note(), "quiet")));
        tile.getStyleClass().add("link");
        tile.setAccessibleText("Tool: " + tool.title() + state + ", " + tool.note());
        inside.getChildren().add(tile);
    }

    private FlowPane acts(DrawerCard card) {
        FlowPane acts = new FlowPane();
        acts.getStyleClass().add("acts");
        boolean drawer = card.labelState() != null;
        List<Act> which = new ArrayList<>(List.of(Act.NEW));
        if (drawer) {
            which.addAll(List.of(Act.LABEL, Act.LOOK));
        }
        if (!card.lots().isEmpty()) {
            which.add(Act.STRIP);
        }
        which.forEach(act -> {
            Button button = new Button(words(act, card) + "  " + Character.toUpperCase(act.letter()));
            button.setId("act-" + act.letter());
            button.setFocusTraversable(false);
            button.setOnAction(pressed -> model.begin(act));
            acts.getChildren().add(button);
        });
        return acts;
    }

    private static String words(Act act, DrawerCard card) {
        return act == Act.STRIP && "parts horn".equals(card.contents()) ? "Strip the horn" : act.words();
    }

    private void addRetired(LotLine lot) {
        Label words = Words.text("Out of use: " + lot.title(), "quiet");
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        Button back = new Button("Bring back");
        back.setMinWidth(Region.USE_PREF_SIZE);
        back.setAccessibleText("Bring back " + lot.title());
        back.setOnAction(pressed -> model.bringBack(lot));
        inside.getChildren().add(new HBox(words, back));
    }

    private void add(String words, String style) {
        if (!words.isBlank()) {
            inside.getChildren().add(Words.text(words, style));
        }
    }

    /** Puts the keyboard on the lot in hand. */
    public void takeKeyboard() {
        if (asking) {
            form.takeKeyboard();
        } else {
            focusLot();
        }
    }

    private void focusLot() {
        int chosen = model.view().chosen();
        if (chosen >= 0 && chosen < tiles.size()) {
            tiles.get(chosen).focus();
            bringIntoView(tiles.get(chosen));
        } else {
            requestFocus();
        }
    }

    private void bringIntoView(Node tile) {
        layout();
        double room = scroll.getViewportBounds().getHeight();
        double over = inside.getHeight() - room;
        if (over > 0) {
            double top = scroll.getVvalue() * over;
            double from = tile.getBoundsInParent().getMinY();
            double to = tile.getBoundsInParent().getMaxY();
            if (from < top || to > top + room) {
                scroll.setVvalue(Math.clamp((from - room / 4) / over, 0, 1));
            }
        }
    }

    /** By the sign: letters are elsewhere on other keyboards. */
    private void typed(KeyEvent key) {
        if (writing(key)
                || asking
                || key.isAltDown()
                || key.isShortcutDown()
                || key.getCharacter().length() != 1) {
            return;
        }
        if (model.press(key.getCharacter().charAt(0))) {
            key.consume();
        }
    }

    private void pressed(KeyEvent key) {
        if (writing(key) || asking) {
            return;
        }
        switch (key.getCode()) {
            case UP -> model.step(-1);
            case DOWN -> model.step(1);
            default -> {
                return;
            }
        }
        key.consume();
    }

    private static boolean writing(KeyEvent key) {
        return key.getTarget() instanceof TextInputControl;
    }

    private static void shown(Node node, boolean yes) {
        node.setVisible(yes);
        node.setManaged(yes);
    }
}
