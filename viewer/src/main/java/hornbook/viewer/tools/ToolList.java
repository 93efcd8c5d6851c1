package hornbook.viewer.tools;

import hornbook.shared.stock.MemberLine;
import hornbook.shared.stock.ToolCard;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Every tool with where it is; those that want something stand first. */
public final class ToolList extends BorderPane {
    private final ToolsModel model;
    private final VBox list = new VBox();
    private final ScrollPane scroll = new ScrollPane(list);
    private final ToolPane pane;
    private final Label trouble = Words.text("", "stop");

    /** @param pull shows a drawer or place */
    public ToolList(ToolsModel model, Consumer<String> pull) {
        this.model = model;
        this.pane = new ToolPane(model, pull);
        getStyleClass().add("tool-list");
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("stand");
        Button fresh = new Button("New tool");
        fresh.setId("new-tool");
        fresh.setOnAction(pressed -> model.askNew());
        setTop(new VBox(fresh, trouble));
        setCenter(scroll);
        model.onChange(this::draw);
    }

    private void draw(ToolsView view) {
        trouble.setText(view.trouble() == null ? "" : view.trouble());
        trouble.setVisible(view.trouble() != null);
        trouble.setManaged(view.trouble() != null);
        list.getChildren().setAll(view.tools().stream().map(this::tile).toList());
        if (view.tools().isEmpty()) {
            list.getChildren().add(Words.text("No tool is entered yet.", "found"));
        }
        pane.show(view);
        setRight(view.open().isPresent() || view.ask() != null ? pane : null);
    }

    private Tile tile(ToolCard tool) {
        String wants = wants(tool);
        VBox words = new VBox(Words.text(tool.title(), "lot-title"));
        if (!wants.isEmpty()) {
            words.getChildren().add(Words.text(wants, "heed"));
        }
        HBox.setHgrow(words, Priority.ALWAYS);
        String label = tool.lies() == null ? "nobody knows where" : tool.label().isBlank() ? "no label" : tool.label();
        Label plate = new Label(label);
        plate.getStyleClass().add("label-plate");
        plate.setMinWidth(Region.USE_PREF_SIZE);
        Tile tile = new Tile(() -> model.choose(tool.id()), words, plate);
        tile.getStyleClass().add("link");
        tile.setId("tool-" + tool.id());
        tile.setAccessibleText(
                tool.title() + ", in " + label + ", " + tool.where() + (wants.isEmpty() ? "" : ", " + wants));
        return tile;
    }

    private static String wants(ToolCard tool) {
        String members = tool.wanting().stream().map(ToolList::words).collect(Collectors.joining(", "));
        return tool.state().equals("good") ? members : tool.state() + (members.isEmpty() ? "" : ", ") + members;
    }

    private static String words(MemberLine member) {
        return member.member() + " " + member.state();
    }
}
