package hornbook.viewer.exchange;

import hornbook.shared.exchange.ImportReport;
import hornbook.shared.exchange.Refusal;
import hornbook.viewer.widget.Words;
import java.util.List;
import javafx.scene.layout.VBox;

/** What came of a trial or of the real thing, with every refused row by number, field and why. */
final class ReportPane extends VBox {
    private static final int MOST_SHOWN = 60;

    ReportPane() {
        getStyleClass().add("report");
    }

    void show(ImportReport report, boolean dry) {
        List<Refusal> refused = report.refused();
        String taken = report.taken() + " of " + report.read() + (report.read() == 1 ? " row " : " rows ");
        getChildren()
                .setAll(Words.text(
                        dry
                                ? taken + "would be taken. Nothing is changed yet."
                                : taken + "taken, in one step: Ctrl+Z takes all of it back.",
                        "found"));
        report.remarks().forEach(remark -> add(Words.sentence(remark), "quiet"));
        if (!refused.isEmpty()) {
            add(refused.size() + (refused.size() == 1 ? " row is refused:" : " rows are refused:"), "banner");
        }
        refused.stream().limit(MOST_SHOWN).forEach(refusal -> add(words(refusal), "refusal"));
        if (refused.size() > MOST_SHOWN) {
            add("and " + (refused.size() - MOST_SHOWN) + " more, all of them in the file of rows to fix.", "quiet");
        }
    }

    private void add(String words, String style) {
        getChildren().add(Words.text(words, style));
    }

    private static String words(Refusal refusal) {
        String field = refusal.field() == null ? "" : ", " + refusal.field().replace('_', ' ');
        return Words.sentence(refusal.at()).replaceFirst("\\.$", "") + field + ": " + refusal.why();
    }
}
