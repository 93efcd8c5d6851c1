package hornbook.viewer.knowledge;

import hornbook.catalogue.entry.Kind;
import hornbook.viewer.card.Card;
import hornbook.viewer.card.CardPane;
import hornbook.viewer.widget.Words;
import hornbook.viewer.window.Screen;
import hornbook.viewer.window.ScreenName;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** What is known, kind by kind; and the shop's own entries, written down and changed. */
public final class KnowledgeScreen implements Screen {
    private final KnowledgeModel model;
    private final BorderPane root = new BorderPane();
    private final BorderPane reading = new BorderPane();
    private final KindList kinds;
    private final EntryList entries;
    private final BrokenPane broken;
    private final Button toBroken = new Button();
    private final TextField filter = new TextField();
    private final Button create = new Button();
    private final EntryActions actions;
    private final CardPane card;
    private final VBox opened;
    private final Label said = Words.text("", "entry-said");
    private final VBox list;

    private @Nullable Card drawn;
    private @Nullable EditModel edited;

    /**
     * @param pull shows a drawer in its cabinet
     * @param bench puts a model on the bench
     */
    public KnowledgeScreen(KnowledgeModel model, Consumer<String> pull, Consumer<Card> bench) {
        this.model = model;
        kinds = new KindList(model::choose);
        entries = new EntryList(model::open);
        broken = new BrokenPane(model);
        actions = new EntryActions(model);
        card = new CardPane(link -> model.follow(link.id()), pull, model::close, bench);
        opened = new VBox(actions, card);
        list = new VBox(finding(), said, entries);
        layOut();
        model.onChange(this::draw);
    }

    /** @param open asks what fits like a card's thing, or fits its model */
    public void onFit(Consumer<Card> open) {
        card.onFit(open);
    }

    private void layOut() {
        root.getStyleClass().add("knowledge");
        root.getStylesheets()
                .add(Objects.requireNonNull(KnowledgeScreen.class.getResource("knowledge.css"))
                        .toExternalForm());
        Stream.of(kinds, entries).forEach(KnowledgeScreen::letEscapeThrough);
        toBroken.setId("to-broken");
        toBroken.setMaxWidth(Double.MAX_VALUE);
        toBroken.setWrapText(true);
        toBroken.setOnAction(pressed -> model.chooseBroken());
        VBox left = new VBox(toBroken, kinds);
        left.getStyleClass().add("kinds-column");
        VBox.setVgrow(kinds, Priority.ALWAYS);
        VBox.setVgrow(entries, Priority.ALWAYS);
        VBox.setVgrow(card, Priority.ALWAYS);
        list.getStyleClass().add("entries-column");
        opened.getStyleClass().add("opened");
        reading.setLeft(left);
        reading.setCenter(list);
        root.setCenter(reading);
    }

    /** A list keeps Esc to itself, which everywhere else steps back. */
    private static void letEscapeThrough(Node list) {
        list.addEventFilter(KeyEvent.KEY_PRESSED, key -> {
            if (key.getCode() == KeyCode.ESCAPE) {
                key.consume();
                Event.fireEvent(list.getScene(), key.copyFor(list.getScene(), list.getScene()));
            }
        });
    }

    private HBox finding() {
        filter.setId("entry-filter");
        filter.setPromptText("words of its name");
        filter.setAccessibleText("Show only entries that bear these words");
        filter.textProperty().addListener((of, before, now) -> {
            if (!now.equals(model.view().filter())) {
                model.filter(now);
            }
        });
        create.setId("new-entry");
        create.setMinWidth(Region.USE_PREF_SIZE);
        create.setOnAction(pressed -> model.create());
        HBox.setHgrow(filter, Priority.ALWAYS);
        HBox line = new HBox(filter, create);
        line.getStyleClass().add("list-line");
        return line;
    }

    @Override
    public ScreenName name() {
        return ScreenName.KNOWLEDGE;
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
    public void takeKeyboard() {
        if (model.view().kind() == null) {
            root.requestFocus();
        } else {
            entries.requestFocus();
        }
    }

    @Override
    public boolean back() {
        return model.back();
    }

    private void draw(KnowledgeView view) {
        EditModel edit = view.edit();
        if (edit != edited) {
            edited = edit;
            show(edit);
        }
        if (edit == null) {
            drawReading(view);
        }
    }

    private void show(@Nullable EditModel edit) {
        if (edit == null) {
            root.setCenter(reading);
            Platform.runLater(entries::requestFocus);
        } else {
            EditPane pane = new EditPane(edit);
            root.setCenter(pane);
            Platform.runLater(pane::takeFirst);
        }
    }

    private void drawReading(KnowledgeView view) {
        kinds.show(view);
        Kind kind = view.kind();
        if (kind == null) {
            broken.show(view);
        } else {
            entries.show(view.lines(), view.open() == null ? null : view.open().id());
            create.setText("New " + KindNames.one(kind));
        }
        reading.setCenter(kind == null ? broken : list);
        if (!filter.getText().equals(view.filter())) {
            filter.setText(view.filter());
        }
        int files = (int)
                view.broken().stream().map(problem -> problem.file()).distinct().count();
        toBroken.setText(files == 1 ? "One own file is not used" : files + " own files are not used");
        shown(toBroken, files > 0);
        said.setText(view.said());
        shown(said, !view.said().isEmpty());
        drawOpened(view);
    }

    private void drawOpened(KnowledgeView view) {
        Opened open = view.open();
        actions.show(view);
        if (open != null && !open.card().equals(drawn)) {
            card.show(open.card());
        }
        drawn = open == null ? null : open.card();
        reading.setRight(open == null ? null : opened);
    }

    private static void shown(Node node, boolean wanted) {
        node.setVisible(wanted);
        node.setManaged(wanted);
    }
}
