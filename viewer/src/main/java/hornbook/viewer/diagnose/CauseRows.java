package hornbook.viewer.diagnose;

import hornbook.catalogue.diagnose.DiagnoseAnswer;
import hornbook.catalogue.diagnose.DiagnoseAnswer.CauseLine;
import hornbook.viewer.widget.ChanceBar;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What it may be, each cause with its bar; what past jobs were found to have. */
final class CauseRows {
    private static final int FOUND_SHOWN = 4;

    private CauseRows() {}

    static List<Node> of(DiagnoseAnswer answer) {
        List<Node> rows = new ArrayList<>();
        rows.add(Words.text("What it may be", "heading"));
        answer.causes().forEach(cause -> rows.add(row(cause.text(), note(cause), cause.probability())));
        rows.add(row("something else", "", answer.somethingElse()));
        if (answer.fromJobs() > 0) {
            String found = answer.foundHere().stream()
                    .limit(FOUND_SHOWN)
                    .map(f -> f.title() + " " + f.jobs())
                    .collect(Collectors.joining(", "));
            rows.add(Words.text(
                    "Of " + answer.fromJobs() + " closed jobs with such a complaint or finding: "
                            + (found.isEmpty() ? "nothing was written down." : found + "."),
                    "quiet"));
        }
        return rows;
    }

    private static String note(CauseLine cause) {
        Boolean said = cause.answer();
        return Stream.of(
                        said == null ? "" : said ? "its check says yes" : "its check says no",
                        cause.jobs() == 0 ? "" : cause.jobs() + (cause.jobs() == 1 ? " job here" : " jobs here"))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static Node row(String text, String note, double probability) {
        Label words = Words.text(Words.sentence(text).replaceFirst("[.]$", ""), "cause-words");
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        Label chance = new Label(Words.chance(probability));
        chance.getStyleClass().add("chance");
        chance.setMinWidth(Region.USE_PREF_SIZE);
        VBox row = new VBox(new HBox(words, chance), new ChanceBar(probability));
        if (!note.isEmpty()) {
            row.getChildren().add(Words.text(note, "quiet"));
        }
        row.getStyleClass().add("cause");
        row.setAccessibleText(text + ", " + Words.chance(probability) + (note.isEmpty() ? "" : ", " + note));
        return row;
    }
}
