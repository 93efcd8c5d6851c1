package hornbook.viewer.bench;

import hornbook.indexer.brief.BriefAnswer;
import hornbook.viewer.widget.Words;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The brief as it grows, one part at a time; only what is in view is drawn. */
final class BriefPane extends VBox {
    private final BriefNodes nodes;
    private final VBox inside = new VBox();
    private final ScrollPane scroll = new ScrollPane(inside);
    private final Map<BriefPart, ToggleButton> tabs = new EnumMap<>(BriefPart.class);
    private final Button print = new Button("Print");
    private final Button fits = new Button("What fits");

    private BriefPart part = BriefPart.BITES;
    private @Nullable BriefAnswer brief;
    private @Nullable Phrases words;

    BriefPane(BriefNodes nodes, Runnable printing) {
        this.nodes = nodes;
        getStyleClass().add("brief");
        print.setId("print-brief");
        print.setMinWidth(Region.USE_PREF_SIZE);
        print.setOnAction(pressed -> printing.run());
        fits.setId("brief-fits");
        fits.setMinWidth(Region.USE_PREF_SIZE);
        fits.setVisible(false);
        fits.setManaged(false);
        Label title = Words.text("Brief", "card-title");
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        HBox head = new HBox(title, fits, print);
        head.getStyleClass().add("panel-head");
        inside.getStyleClass().add("inside");
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(head, tabs(), scroll);
    }

    /** @param asked asks what on hand fits the likeliest model */
    void onFit(Runnable asked) {
        fits.setVisible(true);
        fits.setManaged(true);
        fits.setOnAction(pressed -> asked.run());
    }

    private HBox tabs() {
        ToggleGroup group = new ToggleGroup();
        HBox row = new HBox();
        row.getStyleClass().add("brief-tabs");
        for (BriefPart each : BriefPart.values()) {
            ToggleButton tab = new ToggleButton(each.title());
            tab.setToggleGroup(group);
            tab.setId("brief-" + each.title().toLowerCase(java.util.Locale.ROOT));
            tab.setMaxWidth(Double.MAX_VALUE);
            tab.setMinWidth(Region.USE_PREF_SIZE);
            HBox.setHgrow(tab, Priority.ALWAYS);
            tab.setOnAction(pressed -> {
                tab.setSelected(true);
                part = each;
                draw();
                scroll.setVvalue(0);
            });
            tabs.put(each, tab);
            row.getChildren().add(tab);
        }
        return row;
    }

    void show(BenchView view, Phrases phrases) {
        if (view.brief() != brief) {
            brief = view.brief();
            words = phrases;
            draw();
        }
    }

    private void draw() {
        tabs.forEach((each, tab) -> tab.setSelected(each == part));
        BriefAnswer now = brief;
        print.setDisable(now == null);
        fits.setDisable(now == null);
        List<Node> drawn = now == null || words == null ? List.of() : nodes.of(part, now, words);
        inside.getChildren().setAll(drawn);
    }
}
