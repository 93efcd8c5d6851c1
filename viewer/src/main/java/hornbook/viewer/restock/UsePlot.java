package hornbook.viewer.restock;

import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;

/** What was used, a bar a quarter, the newest at the right; the highest bar bears its number. */
final class UsePlot extends VBox {
    private static final int MONTHS = 3;
    private static final double BAR = 5;
    private static final double GAP = 2;
    private static final double HEIGHT = 34;
    private static final int MOST_BARS = 20;

    UsePlot(List<Integer> byMonth) {
        getStyleClass().add("use-plot");
        List<Integer> quarters = quarters(byMonth);
        int most = quarters.stream().mapToInt(n -> n).max().orElse(0);
        Group bars = new Group();
        double width = MOST_BARS * (BAR + GAP);
        Line foot = new Line(0, HEIGHT, width, HEIGHT);
        foot.getStyleClass().add("foot");
        bars.getChildren().add(foot);
        for (int i = 0; i < quarters.size(); i++) {
            if (quarters.get(i) > 0) {
                double tall = HEIGHT * quarters.get(i) / most;
                double x = width - (quarters.size() - i) * (BAR + GAP);
                Rectangle bar = new Rectangle(x, HEIGHT - tall, BAR, tall);
                bar.getStyleClass().add("bar");
                bars.getChildren().add(bar);
            }
        }
        StackPane plot = new StackPane(bars);
        plot.setMinSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        getChildren().add(plot);
        getChildren().add(Words.text(words(quarters, most), "plot-words"));
        setAccessibleText(spoken(quarters));
    }

    /** The last of them, the newest last; months that fill no quarter are left out at the old end. */
    static List<Integer> quarters(List<Integer> byMonth) {
        List<Integer> quarters = new ArrayList<>();
        for (int end = byMonth.size(); end >= MONTHS && quarters.size() < MOST_BARS; end -= MONTHS) {
            quarters.addFirst(
                    byMonth.subList(end - MONTHS, end).stream().mapToInt(n -> n).sum());
        }
        return quarters;
    }

    private static String words(List<Integer> quarters, int most) {
        return quarters.isEmpty() || most == 0
                ? "no use on record"
                : "%d years, most %d a quarter".formatted(Math.max(1, Math.round(quarters.size() / 4f)), most);
    }

    private static String spoken(List<Integer> quarters) {
        return "Used a quarter, oldest first: "
                + String.join(", ", quarters.stream().map(String::valueOf).toList());
    }
}
