package hornbook.viewer.drawers;

import hornbook.shared.stock.PlaceFront;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The places that are no drawer, kind by kind: hooks, shelves, tubes, parts horns. */
final class PlacesFront extends VBox {
    PlacesFront(List<PlaceFront> places, Consumer<String> open, Runnable setUp) {
        getStyleClass().add("places-front");
        Button fresh = new Button("New place");
        fresh.setId("new-place");
        fresh.setOnAction(pressed -> setUp.run());
        getChildren().add(fresh);
        Map<String, List<PlaceFront>> kinds = places.stream()
                .collect(Collectors.groupingBy(PlaceFront::kind, LinkedHashMap::new, Collectors.toList()));
        kinds.forEach((kind, list) -> {
            FlowPane row = new FlowPane();
            row.getStyleClass().add("acts");
            list.forEach(place -> row.getChildren().add(tile(place, open)));
            getChildren().addAll(Words.text(kind, "heading"), row);
        });
        if (places.isEmpty()) {
            getChildren().add(Words.text("No hook, shelf or parts horn is entered yet.", "found"));
        }
    }

    private static Tile tile(PlaceFront place, Consumer<String> open) {
        String holds = holds(place);
        VBox face = new VBox(
                Words.text(place.name(), "lot-title"), Words.text(place.where(), "quiet"), Words.text(holds, "sizes"));
        Tile tile = new Tile(() -> open.accept(place.id()), face);
        tile.getStyleClass().addAll("link", "place-tile");
        tile.setId("place-" + place.id());
        tile.setAccessibleText(place.name() + ", " + place.where() + ", " + holds);
        return tile;
    }

    private static String holds(PlaceFront place) {
        if (place.lots() + place.tools() == 0) {
            return "nothing there";
        }
        String lots = place.lots() == 0 ? "" : place.lots() + (place.lots() == 1 ? " lot" : " lots");
        String tools = place.tools() == 0 ? "" : place.tools() + (place.tools() == 1 ? " tool" : " tools");
        return lots + (lots.isEmpty() || tools.isEmpty() ? "" : ", ") + tools;
    }
}
