package hornbook.viewer.jobs;

import hornbook.indexer.brief.PastJob;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.JobCard.PhotoLine;
import hornbook.shared.job.Standing;
import hornbook.viewer.ask.AskForm;
import hornbook.viewer.clock.Elapsed;
import hornbook.viewer.pick.PickPane;
import hornbook.viewer.widget.Words;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** The job in view: what it is, what can be done, what is written down; below, the question that is asked. */
final class JobPane extends VBox {
    private final JobsModel model;
    private final Album album;
    private final Consumer<PhotoLine> take;
    private final Label title = Words.text("", "card-title");
    private final Label complaint = Words.text("", "found");
    private final Label state = Words.text("", "where");
    private final ActBar acts;
    private final Label remark = Words.text("", "banner");
    private final Label trouble = Words.text("", "banner");
    private final VBox timers = new VBox();
    private final VBox inside = new VBox();
    private final ScrollPane scroll = new ScrollPane(inside);
    private final PickPane pick;
    private final AskForm ask;

    private @Nullable Sheet drawn;

    /** @param take takes a photo up */
    JobPane(JobsModel model, Album album, Consumer<Act> begin, Consumer<PhotoLine> take) {
        this.model = model;
        this.album = album;
        this.take = take;
        getStyleClass().add("job-pane");
        acts = new ActBar(begin);
        pick = new PickPane(model::choose, model::leave);
        pick.onTyped(model::typed);
        ask = new AskForm(model::answer, model::leave);
        inside.getStyleClass().add("inside");
        timers.getStyleClass().add("links");
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        ask.setMinHeight(USE_PREF_SIZE);
        getChildren().addAll(title, complaint, state, acts, remark, trouble, timers, scroll, pick, ask);
    }

    /** What is drawn once and left as it is until it changes: a photo is not read again, a field not taken away. */
    private record Sheet(
            JobPage page, List<PastJob> kin, @Nullable Expected expected) {}

    void show(JobsView view, Elapsed elapsed) {
        JobPage page = view.page();
        acts.show(page);
        // While something is asked nothing else is begun, and the question needs the room.
        acts.setVisible(!view.asks());
        acts.setManaged(!view.asks());
        tell(remark, view.remark());
        tell(trouble, view.trouble());
        pick.show(view.pick());
        ask.show(view.ask());
        timers.getChildren().clear();
        tell(title, page == null ? "Jobs" : page.horn());
        tell(complaint, page == null ? "" : "\u201c" + page.card().complaint() + "\u201d");
        tell(state, page == null ? "" : state(page));
        if (page == null) {
            drawn = null;
            inside.getChildren().clear();
            return;
        }
        page.card().standing().timers().forEach(timer -> timers.getChildren().add(row(timer, elapsed)));
        Sheet sheet = new Sheet(page, view.kin(), view.expected());
        if (!sheet.equals(drawn)) {
            boolean other = drawn == null
                    || !drawn.page().card().id().equals(page.card().id());
            drawn = sheet;
            inside.getChildren().setAll(new PageSections(model, album, take).of(view, page));
            scroll.setVvalue(other ? 0 : scroll.getVvalue());
        }
    }

    private HBox row(Standing.Soaking timer, Elapsed elapsed) {
        Label words = Words.text(timer.what() + ": " + elapsed.of(timer), "bench-soaking");
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        Button done = new Button("Done");
        done.setAccessibleText("Put the timer away: " + timer.what());
        done.setMinWidth(Region.USE_PREF_SIZE);
        done.setOnAction(pressed -> model.ready(timer.id()));
        HBox row = new HBox(words, done);
        row.getStyleClass().add("panel-head");
        return row;
    }

    private static String state(JobPage page) {
        JobCard card = page.card();
        String owner = page.owner().isBlank() ? "" : "owner " + page.owner();
        String promised = card.promised() == null ? "" : "promised " + card.promised();
        String done = card.done() == null ? "" : "done " + card.done();
        String quoted = card.quotedMin() == null ? "" : " of " + card.quotedMin() + " quoted";
        String time = card.minutes() + " min" + quoted + (over(card) ? ": near its limit, ask the owner" : "");
        return Stream.of(card.id(), owner, card.kind(), card.status(), "took in " + card.tookIn(), promised, done, time)
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("  \u00b7  "));
    }

    /** The trade warns at four fifths of what was agreed (common practice, jobs-and-times.md §8). */
    private static boolean over(JobCard card) {
        return card.done() == null && card.quotedMin() != null && card.minutes() * 5 >= card.quotedMin() * 4;
    }

    private static void tell(Label label, @Nullable String words) {
        boolean any = words != null && !words.isEmpty();
        label.setText(any ? words : "");
        label.setVisible(any);
        label.setManaged(any);
    }
}
