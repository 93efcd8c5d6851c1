package hornbook.viewer.card;

import hornbook.viewer.widget.LotRow;
import hornbook.viewer.widget.Plate;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.widget.Words;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Draws a card. What it names can be opened from it. */
public final class CardPane extends VBox {
    /** What has sizes, or a model. */
    private static final Set<String> FITTED = Set.of("lot", "part", "supply", "horn", "job", "model");

    private static final Set<String> ON_BENCH = Set.of("horn", "job", "model");

    private final Consumer<Block.Link> open;
    private final Consumer<String> pull;
    private final Consumer<Card> bench;
    private final Button toBench = new Button("To the bench");
    private @Nullable Consumer<String> jobs;
    private final Button toJobs = new Button("Open in Jobs");
    private @Nullable Consumer<Card> fits;
    private final Button toFit = new Button("Make it fit");
    private final Label title = Words.text("", "card-title");
    private final Label kind = Words.text("", "where");
    private final VBox inside = new VBox();
    private final ScrollPane scroll = new ScrollPane(inside);

    /**
     * @param open opens another record
     * @param pull shows a drawer in its cabinet
     * @param close puts the card away
     * @param bench puts a horn, a job's horn or a model on the bench
     */
    public CardPane(Consumer<Block.Link> open, Consumer<String> pull, Runnable close, Consumer<Card> bench) {
        this.open = open;
        this.pull = pull;
        this.bench = bench;
        toBench.setId("to-bench");
        toJobs.setId("to-jobs");
        toFit.setId("to-fit");
        getStyleClass().add("card-pane");
        Button away = new Button("Put away");
        away.setAccessibleHelp("Esc");
        away.setMinWidth(Region.USE_PREF_SIZE);
        away.setOnAction(pressed -> close.run());
        VBox named = new VBox(title, kind);
        HBox.setHgrow(named, Priority.ALWAYS);
        HBox head = new HBox(named, away);
        head.getStyleClass().add("panel-head");
        HBox acts = new HBox(toBench, toJobs, toFit);
        acts.getStyleClass().add("card-acts");
        inside.getStyleClass().add("inside");
        scroll.setFitToWidth(true);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(head, acts, scroll);
    }

    /** @param open brings the job of a card into view where it is worked on */
    public void onJob(Consumer<String> open) {
        jobs = open;
    }

    /** @param open asks what on hand fits like the card's lot or thing, or fits its horn */
    public void onFit(Consumer<Card> open) {
        fits = open;
    }

    public void show(Card card) {
        Consumer<Card> fit = fits;
        toFit.setText(ON_BENCH.contains(card.kind()) ? "What fits it" : "Make it fit");
        toFit.setVisible(fit != null && FITTED.contains(card.kind()));
        toFit.setManaged(toFit.isVisible());
        toFit.setOnAction(pressed -> Objects.requireNonNull(fit).accept(card));
        Consumer<String> toJob = jobs;
        toJobs.setVisible(toJob != null && card.kind().equals("job"));
        toJobs.setManaged(toJobs.isVisible());
        toJobs.setOnAction(pressed -> Objects.requireNonNull(toJob).accept(card.id()));
        toBench.setVisible(ON_BENCH.contains(card.kind()));
        toBench.setManaged(toBench.isVisible());
        toBench.setOnAction(pressed -> bench.accept(card));
        title.setText(card.title());
        kind.setText(card.kind() + "  \u00b7  " + card.id());
        inside.getChildren().setAll(card.blocks().stream().map(this::draw).toList());
        scroll.setVvalue(0);
    }

    private Node draw(Block block) {
        return switch (block) {
            case Block.Text text -> text(text);
            case Block.Heed heed -> Words.text(Words.sentence(heed.words()), heed.stop() ? "stop" : "banner");
            case Block.Lies lies -> lies(lies);
            case Block.Lots lots ->
                new VBox(lots.lots().stream().map(LotRow::new).toArray(Node[]::new));
            case Block.Links links -> links(links);
            case Block.Drawn drawn -> new DrawnValues(drawn);
        };
    }

    private static Node text(Block.Text text) {
        Label words = Words.text(text.words(), "words");
        return text.heading().isEmpty() ? words : new VBox(Words.text(text.heading(), "heading"), words);
    }

    private Node lies(Block.Lies lies) {
        Label count = new Label(lies.count());
        count.getStyleClass().addAll("big-count", lies.count().equals("0") ? "none" : "some");
        count.setMinWidth(Region.USE_PREF_SIZE);
        Plate plate = new Plate(lies.label(), lies.where());
        Button show = new Button("Show it  Ctrl+Enter");
        show.setId("show-it");
        show.setAccessibleText("Show " + lies.label() + " in its cabinet");
        show.setMinWidth(Region.USE_PREF_SIZE);
        show.setOnAction(pressed -> pull.accept(lies.drawer()));
        HBox.setHgrow(plate, Priority.ALWAYS);
        HBox row = lies.count().isEmpty() ? new HBox(plate) : new HBox(count, plate);
        row.getStyleClass().add("lies");
        return new VBox(row, show);
    }

    private Node links(Block.Links links) {
        VBox list = new VBox(Words.text(links.heading(), "heading"));
        list.getStyleClass().add("links");
        links.links().forEach(link -> list.getChildren().add(link(link)));
        return list;
    }

    private Node link(Block.Link link) {
        String words = link.note().isBlank() ? link.title() : link.title() + "  \u00b7  " + link.note();
        Tile tile = new Tile(() -> open.accept(link), Words.text(words, "words"));
        tile.getStyleClass().add("link");
        tile.setAccessibleText(words);
        return tile;
    }
}
