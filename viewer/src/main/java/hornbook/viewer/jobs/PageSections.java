package hornbook.viewer.jobs;

import hornbook.indexer.brief.PastJob;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.JobCard.PhotoLine;
import hornbook.shared.job.Standing;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** What is written down of a job, part by part; what says nothing is left out. */
final class PageSections {
    private final JobsModel model;
    private final Album album;
    private final Consumer<PhotoLine> take;
    private final List<Node> nodes = new ArrayList<>();

    /** @param take takes a photo up */
    PageSections(JobsModel model, Album album, Consumer<PhotoLine> take) {
        this.model = model;
        this.album = album;
        this.take = take;
    }

    List<Node> of(JobsView view, JobPage page) {
        JobCard card = page.card();
        nodes.add(new StageRow(page.stages()));
        if (view.expected() != null && page.open()) {
            nodes.add(new ExpectedPane(model, view.expected()));
        }
        lines("How it went", card.went() == null ? Stream.of() : Stream.of(went(card)));
        lines("", Stream.of(card.note()));
        lines("Where it is", card.standing().pieces().stream().map(PageSections::piece));
        lines("Owner's yes", card.consents().stream().map(c -> c.day() + "  " + c.what() + ", said by " + c.saidBy()));
        lines("Quirks met", card.quirksMet().stream().map(model::title));
        lines("Findings", findings(card));
        lines("Parts", card.parts().stream().map(p -> p.qty() + "  " + p.title() + "  " + p.whatFor()));
        lines("Pads", pads(card));
        lines("Times", card.tasks().stream().map(model.words()::time));
        lines(
                "Taking down",
                card.takenDown().stream().map(d -> d.step() + "  " + d.piece() + "  " + d.how() + "  " + d.reason()));
        if (!card.photos().isEmpty()) {
            nodes.add(new PhotoRow(card.photos(), album, take));
        }
        if (page.lesson() != null) {
            lines("Its model's entry could learn", page.lesson().says().stream());
        }
        past(view.kin());
        return nodes;
    }

    private void lines(String heading, Stream<String> lines) {
        String words = lines.map(String::strip).filter(line -> !line.isEmpty()).collect(Collectors.joining("\n"));
        if (!words.isEmpty()) {
            nodes.add(
                    heading.isEmpty()
                            ? Words.text(words, "words")
                            : new VBox(Words.text(heading, "heading"), Words.text(words, "words")));
        }
    }

    private static String went(JobCard card) {
        return card.went() + (card.wentNote().isBlank() ? "" : ": " + card.wentNote());
    }

    private static String piece(Standing.Piece piece) {
        return piece.piece() + ": " + piece.where()
                + (piece.waitsFor().isBlank() ? "" : ", waits for " + piece.waitsFor()) + "  \u00b7  since "
                + piece.since();
    }

    /** Cups measured by the dozen stand on the map; here they are one line. */
    private Stream<String> findings(JobCard card) {
        long cups = card.findings().stream().filter(PageSections::cup).count();
        Stream<String> others = card.findings().stream().filter(f -> !cup(f)).map(model.words()::finding);
        return cups == 0 ? others : Stream.concat(others, Stream.of(cups + " readings at cups: see the map (M)"));
    }

    private static boolean cup(JobCard.FindingLine finding) {
        return finding.where().startsWith("cup-") && !finding.unit().isEmpty();
    }

    private Stream<String> pads(JobCard card) {
        return card.pads().isEmpty()
                ? Stream.of()
                : Stream.of(card.pads().size() + " fitted: "
                        + card.pads().stream()
                                .map(p ->
                                        model.title(p.cup()) + " " + p.sizeMm().toPlainString())
                                .collect(Collectors.joining(", ")));
    }

    private void past(List<PastJob> jobs) {
        if (jobs.isEmpty()) {
            return;
        }
        VBox list = new VBox(Words.text("Past jobs that may teach something", "heading"));
        list.getStyleClass().add("links");
        jobs.forEach(job -> list.getChildren().add(tile(job)));
        nodes.add(list);
    }

    private Tile tile(PastJob job) {
        String minutes = job.minutes() == null ? "" : job.minutes() + " min";
        String kin = job.kin().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        String first = Stream.of(job.tookIn() + "  " + job.kind(), model.title(job.model()), minutes, kin)
                .filter(part -> !part.isBlank())
                .collect(Collectors.joining("  \u00b7  "));
        String second = (job.went() == null ? "" : "went " + job.went() + ": " + job.wentNote() + "  \u00b7  ")
                + job.complaint();
        Tile tile = new Tile(
                () -> model.inView().open(job.id()), new VBox(Words.text(first, "words"), Words.text(second, "quiet")));
        tile.getStyleClass().add("link");
        tile.setAccessibleText(first + ", " + second);
        return tile;
    }
}
