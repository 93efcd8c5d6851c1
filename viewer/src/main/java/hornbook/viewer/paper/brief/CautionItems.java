package hornbook.viewer.paper.brief;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Caution;
import hornbook.indexer.brief.CautionLine;
import hornbook.viewer.paper.Headline;
import hornbook.viewer.paper.Item;
import hornbook.viewer.paper.Item.Mark;
import hornbook.viewer.paper.Piece;
import hornbook.viewer.paper.Prose;
import java.util.ArrayList;
import java.util.List;

/** How what is fetched can hurt: the hazards always, how to handle each tool and supply where there is room. */
final class CautionItems {
    private static final String DEFERS =
            "The safety data sheet of the product in hand, its label and the local code decide.";

    private final Catalogue catalogue;
    private final BriefDetail detail;

    CautionItems(Catalogue catalogue, BriefDetail detail) {
        this.catalogue = catalogue;
        this.detail = detail;
    }

    List<Piece> of(List<CautionLine> all) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Headline("Cautions", detail.points() + 2));
        pieces.add(Item.of(
                new Prose()
                        .bold(DEFERS)
                        .plain("Work with gas, flame, lead or strong chemicals only as local rules allow, and leave to"
                                + " licensed people what they reserve for them."),
                Mark.STOP,
                detail.points()));
        all.stream().filter(this::hazard).forEach(line -> pieces.add(item(line)));
        if (detail.handling()) {
            all.stream().filter(line -> !hazard(line)).forEach(line -> pieces.add(item(line)));
        }
        return pieces;
    }

    int leftOut(List<CautionLine> all) {
        return detail.handling()
                ? 0
                : (int) all.stream().filter(line -> !hazard(line)).count();
    }

    private boolean hazard(CautionLine line) {
        return catalogue.entry(line.id()).orElse(null) instanceof Caution;
    }

    private Item item(CautionLine line) {
        String text = line.text().replace(DEFERS, "").strip();
        String of = hazard(line) && !line.of().isEmpty() ? " (" + String.join(", ", line.of()) + ")" : "";
        return Item.of(new Prose().bold(line.title() + of + ":").plain(text), Mark.POINT, detail.points());
    }
}
