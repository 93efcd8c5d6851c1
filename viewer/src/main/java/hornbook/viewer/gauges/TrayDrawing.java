package hornbook.viewer.gauges;

import hornbook.shared.pads.Assignment;
import hornbook.shared.pads.PadAnswer;
import hornbook.shared.pads.Shortage;
import hornbook.viewer.widget.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The tray by half millimetres: over each size the cups it fills, those a half step off marked, those left empty last. */
final class TrayDrawing extends FlowPane {
    /** One cup over its size. */
    private record Dot(String words, String style) {}

    TrayDrawing(PadAnswer answer) {
        getStyleClass().add("tray");
        Map<BigDecimal, List<Dot>> sizes = new TreeMap<>();
        answer.assignments().forEach(a -> at(sizes, a.size()).add(served(a)));
        answer.shortages().forEach(s -> at(sizes, s.size()).add(missing(s)));
        sizes.forEach((size, dots) -> getChildren().add(column(size, dots)));
    }

    private static List<Dot> at(Map<BigDecimal, List<Dot>> sizes, BigDecimal size) {
        return sizes.computeIfAbsent(size.setScale(1, java.math.RoundingMode.HALF_UP), s -> new ArrayList<>());
    }

    private static Dot served(Assignment a) {
        String words = a.cup() + (a.job() == null ? "" : " of " + a.job());
        return a.halfSteps() == 0
                ? new Dot(words, "exact")
                : new Dot(words + ", ruled " + a.ruled().toPlainString(), "half-step");
    }

    private static Dot missing(Shortage s) {
        return new Dot(s.cup() + (s.job() == null ? "" : " of " + s.job()) + ": none left", "short");
    }

    private static VBox column(BigDecimal size, List<Dot> dots) {
        FlowPane stack = new FlowPane();
        stack.getStyleClass().add("dots");
        stack.setPrefWrapLength(48);
        dots.forEach(dot -> stack.getChildren().add(dot(dot)));
        VBox column = new VBox(stack, Words.text(size.toPlainString(), "tray-size"));
        column.getStyleClass().add("tray-column");
        column.setAccessibleText(size.toPlainString() + " mm: "
                + String.join("; ", dots.stream().map(Dot::words).toList()));
        return column;
    }

    private static Label dot(Dot dot) {
        Label label = new Label(
                switch (dot.style()) {
                    case "short" -> "\u2715";
                    case "half-step" -> "\u00bd";
                    default -> "";
                });
        label.getStyleClass().addAll("dot", dot.style());
        label.setTooltip(new Tooltip(dot.words()));
        return label;
    }
}
