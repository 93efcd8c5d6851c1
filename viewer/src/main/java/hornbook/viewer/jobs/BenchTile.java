package hornbook.viewer.jobs;

import hornbook.shared.job.OnBench;
import hornbook.shared.job.Standing;
import hornbook.viewer.clock.Elapsed;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.time.LocalDate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One horn on the bench: what it is, what is wrong, its clock, where it is, what it waits for, when it is promised. */
final class BenchTile extends Tile {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private final OnBench on;
    private final Label clock = new Label();
    private final Label soaking = Words.text("", "bench-soaking");
    private final String described;

    BenchTile(OnBench on, int place, LocalDate today, Runnable open) {
        super(open);
        this.on = on;
        getStyleClass().addAll("link", "bench-tile");
        setId("bench-" + on.id());
        Label digit = new Label(place <= 9 ? Integer.toString(place) : "");
        digit.getStyleClass().add("pick-digit");
        digit.setMinWidth(USE_PREF_SIZE);
        Label title = Words.text(title(on), "lot-title");
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        clock.getStyleClass().add("bench-clock");
        clock.setMinWidth(USE_PREF_SIZE);
        VBox face = new VBox(new HBox(title, clock), Words.text(on.complaint(), "quiet"));
        HBox.setHgrow(face, Priority.ALWAYS);
        String where = where(on.standing());
        if (!where.isEmpty()) {
            face.getChildren().add(Words.text(where, "bench-where"));
        }
        boolean late = on.promised() != null && on.promised().isBefore(today);
        face.getChildren().addAll(soaking, Words.text(dates(on, late), late ? "heed" : "quiet"));
        getChildren().setAll(digit, face);
        described = title(on) + ", " + on.complaint() + ", " + where + ", " + dates(on, late);
        setAccessibleText(described);
    }

    OnBench job() {
        return on;
    }

    void choose(boolean chosen) {
        pseudoClassStateChanged(CHOSEN, chosen);
    }

    void tick(Elapsed elapsed) {
        String runs = on.standing().clocks().stream().map(elapsed::of).collect(Collectors.joining(", "));
        set(clock, runs);
        set(
                soaking,
                on.standing().timers().stream()
                        .map(timer -> timer.what() + ": " + elapsed.of(timer))
                        .collect(Collectors.joining(", ")));
        setAccessibleText(runs.isEmpty() ? described : described + ", clock runs " + runs);
    }

    private static void set(Label label, String words) {
        if (!label.getText().equals(words) || label.isVisible() == words.isEmpty()) {
            label.setText(words);
            label.setVisible(!words.isEmpty());
            label.setManaged(!words.isEmpty());
        }
    }

    private static String title(OnBench on) {
        String sold = on.soldAs() == null || on.soldAs().isBlank() ? "" : ", sold as " + on.soldAs();
        String model = on.model().equals("not placed") ? on.instrument() + ", not placed" : on.model();
        return model + sold;
    }

    private static String where(Standing standing) {
        return standing.pieces().stream()
                .map(piece -> piece.piece() + ": " + piece.where()
                        + (piece.waitsFor().isBlank() ? "" : ", waits for " + piece.waitsFor()))
                .collect(Collectors.joining("\n"));
    }

    private static String dates(OnBench on, boolean late) {
        String promised = on.promised() == null ? "no day promised" : (late ? "LATE: " : "promised ") + on.promised();
        String time = on.minutes() == 0 && on.quotedMin() == null
                ? ""
                : on.minutes() + (on.quotedMin() == null ? "" : " of " + on.quotedMin()) + " min";
        String waits = on.status().equals("waiting") ? "waiting" : "";
        return Stream.of(on.id(), on.kind(), promised, time, waits)
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("  \u00b7  "));
    }
}
