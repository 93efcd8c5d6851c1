package hornbook.viewer.paper.plate;

import hornbook.catalogue.entry.Catalogue;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Printed;
import hornbook.viewer.paper.Sheet;
import hornbook.viewer.paper.TextFlow;
import hornbook.viewer.paper.plate.Plates.Group;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Prints every drawing with its words, to have by the bench. */
public final class ContactSheet {
    private static final String TITLE = "What to look at";
    private static final double BETWEEN = 5;
    private static final double BELOW = 4;
    private static final double TALLEST = 150;

    private final Catalogue catalogue;
    private final PaperSize paper;

    public ContactSheet(Catalogue catalogue, PaperSize paper) {
        this.catalogue = catalogue;
        this.paper = paper;
    }

    /** @throws hornbook.shared.shop.BadInput where the file cannot be written */
    public Printed print(Path file) {
        try (Sheet sheet = new Sheet(paper, TITLE)) {
            TextFlow flow = new TextFlow(sheet, TITLE);
            List<Placed> placed = new ArrayList<>();
            for (Group group : new Plates(catalogue).groups()) {
                print(sheet, flow, group, placed);
            }
            sheet.save(file);
            return new Printed(file.toString(), sheet.pages(), placed);
        }
    }

    private static void print(Sheet sheet, TextFlow flow, Group group, List<Placed> placed) {
        double width = (flow.width() - (group.across() - 1) * BETWEEN) / group.across();
        List<Plate> plates = group.plates();
        for (int from = 0; from < plates.size(); from += group.across()) {
            List<Plate> row = plates.subList(from, Math.min(from + group.across(), plates.size()));
            double tall = tallest(row, width);
            double words = row.stream()
                    .mapToDouble(plate -> plate.words(sheet, width))
                    .max()
                    .orElse(0);
            if (from == 0) {
                flow.heading(group.title(), tall + words + BELOW);
            }
            double top = flow.room(tall + words + BELOW);
            for (int i = 0; i < row.size(); i++) {
                double left = flow.left() + i * (width + BETWEEN);
                Rectangle2D box = new Rectangle2D.Double(left, top, width, tall);
                row.get(i).print(sheet, box);
                placed.add(Placed.of(row.get(i), sheet.pages(), box));
            }
        }
    }

    private static double tallest(List<Plate> row, double width) {
        return row.stream()
                .mapToDouble(plate -> Math.min(
                        TALLEST,
                        width * plate.picture().height() / plate.picture().width()))
                .max()
                .orElse(0);
    }

    /** What was printed. */
    public record Printed(String file, int pages, List<Placed> pictures) {
        /** Keeps its own copy. */
        public Printed {
            pictures = List.copyOf(pictures);
        }
    }

    /**
     * Where a drawing stands: page from 1, its box in millimetres from the upper left corner.
     *
     * @param value empty for a drawing of no trait
     */
    public record Placed(String trait, String value, int page, double x, double y, double width, double height) {
        static Placed of(Plate plate, int page, Rectangle2D box) {
            return new Placed(
                    plate.picture().trait(),
                    plate.picture().value(),
                    page,
                    box.getX(),
                    box.getY(),
                    box.getWidth(),
                    box.getHeight());
        }
    }
}
