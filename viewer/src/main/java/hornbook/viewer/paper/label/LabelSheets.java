package hornbook.viewer.paper.label;

import hornbook.viewer.paper.Printed;
import hornbook.viewer.paper.Sheet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Prints drawer labels, also on a sheet of which some cells are used up. */
public final class LabelSheets {
    private final LabelGrid grid;
    private final int firstCell;
    private final boolean ruler;

    /**
     * How they are printed.
     *
     * @param firstCell the first cell still free, from 1
     * @param ruler a page to try the printer with comes first
     * @throws hornbook.shared.shop.BadInput where the sheet has no such cell
     */
    public LabelSheets(LabelGrid grid, int firstCell, boolean ruler) {
        grid.cell(firstCell);
        this.grid = grid;
        this.firstCell = firstCell;
        this.ruler = ruler;
    }

    /** @throws hornbook.shared.shop.BadInput where the file cannot be written */
    public Printed print(List<Label> labels, Path file) {
        try (Sheet sheet = new Sheet(grid.paper(), "Drawer labels")) {
            if (ruler) {
                Ruler.print(sheet);
            }
            List<Placed> placed = new ArrayList<>();
            for (int i = 0; i < labels.size(); i++) {
                placed.add(place(sheet, labels.get(i), firstCell - 1 + i, i == 0));
            }
            sheet.save(file);
            return new Printed(file.toString(), sheet.pages(), placed);
        }
    }

    private Placed place(Sheet sheet, Label label, int before, boolean first) {
        int cell = before % grid.cells() + 1;
        if (first || cell == 1) {
            sheet.page();
        }
        new LabelFace(sheet, grid.cell(cell)).print(label);
        return new Placed(label.id(), label.code(), sheet.pages(), cell);
    }

    /**
     * What was printed.
     *
     * @param pages with the test page where one was asked for
     */
    public record Printed(String file, int pages, List<Placed> labels) {
        /** Keeps its own copy. */
        public Printed {
            labels = List.copyOf(labels);
        }
    }

    /** Where a label stands: page and cell, both from 1. */
    public record Placed(String drawer, String code, int page, int cell) {}
}
