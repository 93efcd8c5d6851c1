package hornbook.viewer.drawers;

import hornbook.shared.stock.DrawerCard;
import hornbook.shared.stock.ToolLine;
import hornbook.viewer.widget.LotRow;
import hornbook.viewer.widget.Words;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** An open drawer: its label against what was found in it, and everything that lies there. */
final class DrawerPanel extends VBox {
    private final VBox inside = new VBox();
    private final ScrollPane scroll = new ScrollPane(inside);
    private final Label label = Words.text("", "panel-label");
    private final Label where = Words.text("", "where");

    DrawerPanel(Runnable close) {
        getStyleClass().add("drawer-panel");
        Button shut = new Button("Push in");
        shut.setAccessibleHelp("Esc");
        shut.setId("push-in");
        shut.setMinWidth(Region.USE_PREF_SIZE);
        shut.setOnAction(pressed -> close.run());
        VBox named = new VBox(label, where);
        HBox.setHgrow(named, Priority.ALWAYS);
        HBox head = new HBox(named, shut);
        head.getStyleClass().add("panel-head");
        inside.getStyleClass().add("inside");
        scroll.setFitToWidth(true);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(head, scroll);
    }

    void show(DrawerCard card) {
        label.setText(card.label().isBlank() ? "no label" : card.label());
        where.setText(card.where() + "  \u00b7  " + card.id());
        inside.getChildren().clear();
        add(card.heed() == null ? "" : Words.sentence(card.heed()), "banner");
        add(card.contents().isBlank() ? "" : "Found in it: " + card.contents(), "found");
        add(card.lastLookedThrough() == null ? "" : "Looked through " + card.lastLookedThrough(), "quiet");
        add(card.note().isBlank() ? "" : Words.sentence(card.note()), "note");
        card.lots().forEach(lot -> inside.getChildren().add(new LotRow(lot)));
        card.tools().forEach(this::add);
        if (card.lots().isEmpty() && card.tools().isEmpty()) {
            add("Nothing lies here.", "found");
        }
        scroll.setVvalue(0);
    }

    private void add(ToolLine tool) {
        add("Tool: " + tool.title() + (tool.state().equals("good") ? "" : " (" + tool.state() + ")"), "tool-row");
        add(tool.note(), "quiet");
    }

    private void add(String words, String style) {
        if (!words.isBlank()) {
            inside.getChildren().add(Words.text(words, style));
        }
    }
}
