package hornbook.viewer.gauges;

import hornbook.shared.gauge.GaugeAnswer;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** A size in every form: what lies on it, and the nearest below and above in each series. */
final class SizePane implements Pane {
    private static final String HOW = "Any size or thread, as it is written: 2.74 mm, .108\", 7/64, #40, F drill,"
            + " 18 AWG, 3-48, 2.95\u00b10.02 mm.";

    private final AskField size;
    private final Sheet sheet;

    SizePane(SizeModel model) {
        size = new AskField("ask-size", "Size", "2.74 mm   .108\"   #40", model::typed);
        sheet = new Sheet(size, Words.text(HOW, "quiet"));
        model.onChange(this::draw);
    }

    @Override
    public String title() {
        return "Size";
    }

    @Override
    public Node node() {
        return sheet;
    }

    @Override
    public void focus() {
        size.focus();
    }

    private void draw(SizeView view) {
        List<Node> nodes = new ArrayList<>();
        if (view.trouble() != null) {
            nodes.add(Words.text(view.trouble(), "banner"));
        }
        if (view.answer() != null) {
            draw(view.answer(), nodes);
        }
        sheet.answer(nodes);
    }

    private static void draw(GaugeAnswer answer, List<Node> nodes) {
        nodes.add(Words.text(answer.size() + "   " + answer.thou() + " thou", "big"));
        answer.thread()
                .ifPresent(t -> nodes.add(Words.text(
                        t.designation() + ", " + t.standard() + ": pitch " + t.pitch() + ", effective "
                                + t.pitchDiameter() + ", hole " + t.minorOfHole(),
                        "said")));
        answer.pad().ifPresent(p -> nodes.add(Words.text("A cup of this inside takes a pad of " + p.size(), "said")));
        if (!answer.within().isEmpty()) {
            nodes.add(Sheet.heading("Within the doubt"));
            answer.within().forEach(near -> nodes.add(Words.text(said(near), "said")));
        }
        nodes.add(series(answer));
    }

    private static Node series(GaugeAnswer answer) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("series");
        int row = 0;
        for (String head : List.of("", "just under", "the same", "just over")) {
            grid.add(Words.text(head, "quiet"), row++, 0);
        }
        row = 1;
        for (GaugeAnswer.Neighbours one : answer.scales()) {
            grid.add(Words.text(one.series(), "series-name"), 0, row);
            put(grid, one.below(), 1, row);
            put(grid, one.at(), 2, row);
            put(grid, one.above(), 3, row);
            row++;
        }
        return grid;
    }

    private static void put(GridPane grid, Optional<GaugeAnswer.Near> near, int column, int row) {
        near.ifPresent(n -> {
            VBox cell = new VBox(new Label(n.name()));
            if (column != 2) {
                cell.getChildren().add(Words.text(off(n), "sizes"));
            }
            cell.getStyleClass().add(column == 2 ? "same" : "near");
            grid.add(cell, column, row);
        });
    }

    private static String said(GaugeAnswer.Near near) {
        return near.error().nanometres() == 0 ? near.name() : near.name() + ", " + off(near);
    }

    private static String off(GaugeAnswer.Near near) {
        String error = near.error().inMillimetres();
        return error.startsWith("-") ? "\u2212" + error.substring(1) : "+" + error;
    }
}
