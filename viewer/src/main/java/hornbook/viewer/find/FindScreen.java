package hornbook.viewer.find;

import hornbook.viewer.card.Card;
import hornbook.viewer.card.CardPane;
import hornbook.viewer.widget.Words;
import hornbook.viewer.window.ScreenName;
import hornbook.viewer.window.Searching;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Everything the search box finds, and the card of what is opened. */
public final class FindScreen implements Searching {
    private static final String HOW = "Type as you would say it: a part, a drawer, a make, a size, a thread, a serial,"
            + " a symptom.\n\nneck screw\n3-48\n2.74 mm\nlow B\u266d warbles\nhow did the last overhaul go";

    private final FindModel model;
    private final Puller pull;
    private final BorderPane root = new BorderPane();
    private final HitList hits;
    private final CardPane pane;
    private final Label said = Words.text("", "said");

    private @Nullable Card drawn;

    /**
     * @param pull shows a drawer in its cabinet, with a lot in hand where one is named
     * @param bench puts a horn, a job's horn or a model on the bench
     * @param job brings a job into view where it is worked on
     */
    public FindScreen(FindModel model, Puller pull, Consumer<Card> bench, Consumer<String> job) {
        this.model = model;
        this.pull = pull;
        hits = new HitList(place -> {
            model.choose(place);
            model.open();
        });
        pane = new CardPane(link -> model.follow(link.kind(), link.id()), drawer -> pull(""), model::close, bench);
        pane.onJob(job);
        root.getStyleClass().add("find");
        root.getStylesheets()
                .add(Objects.requireNonNull(FindScreen.class.getResource("find.css"))
                        .toExternalForm());
        root.setTop(new VBox(said));
        root.setCenter(hits);
        model.onChange(this::draw);
    }

    /** @param open asks what fits like a card's lot or thing, or fits its horn */
    public void onFit(Consumer<Card> open) {
        pane.onFit(open);
    }

    @Override
    public ScreenName name() {
        return ScreenName.FIND;
    }

    @Override
    public Node node() {
        return root;
    }

    @Override
    public void shown() {
        model.refresh();
    }

    @Override
    public boolean back() {
        return model.back();
    }

    @Override
    public void typed(String text) {
        model.typed(text);
    }

    @Override
    public void step(int rows) {
        model.step(rows);
    }

    @Override
    public void open() {
        model.open();
    }

    @Override
    public void pull(String then) {
        model.lying().ifPresent(lying -> pull.pull(lying.drawer(), lying.lot(), then));
    }

    private void draw(FindView view) {
        hits.show(view);
        said.setText(saying(view));
        said.setVisible(!said.getText().isEmpty());
        said.setManaged(said.isVisible());
        Card card = view.card();
        if (card != null && !card.equals(drawn)) {
            pane.show(card);
        }
        drawn = card;
        root.setRight(card == null ? null : pane);
    }

    private static String saying(FindView view) {
        if (view.trouble() != null) {
            return view.trouble();
        }
        if (view.text().isBlank()) {
            return HOW;
        }
        if (view.hits().isEmpty()) {
            return "Nothing found for \u201c" + view.text().strip() + "\u201d. Try fewer words, or a part of one.";
        }
        return view.asOf() == null ? "" : "As of " + view.asOf() + ": the shop has been written in since.";
    }
}
