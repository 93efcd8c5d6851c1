package hornbook.viewer.widget;

import hornbook.shared.stock.LotLine;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One lot in an open drawer: how many, what, its sizes, and why not to take from it. */
public final class LotRow extends HBox {
    public LotRow(LotLine lot) {
        getStyleClass().add("lot-row");
        Label count = new Label(lot.count());
        count.getStyleClass().addAll("count", lot.count().equals("0") ? "none" : "some");
        if (!Character.isDigit(lot.count().charAt(0))) {
            count.getStyleClass().add("rough");
        }
        VBox words = new VBox(Words.text(lot.title(), "lot-title"));
        HBox.setHgrow(words, Priority.ALWAYS);
        String sizes = Stream.of(lot.dimensions().replace(";", "  ").replace("=", " "), lot.thread(), lot.state())
                .filter(part -> part != null && !part.isBlank())
                .collect(Collectors.joining("  \u00b7  "));
        words.getChildren().add(Words.text(sizes, "sizes"));
        if (lot.heed() != null) {
            words.getChildren().add(Words.text(lot.heed(), "heed"));
        }
        getChildren().addAll(count, words);
        setAccessibleText(lot.count() + " " + lot.title() + ", " + sizes);
    }
}
