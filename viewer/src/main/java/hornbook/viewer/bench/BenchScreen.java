package hornbook.viewer.bench;

import hornbook.catalogue.hornmap.HornMap;
import hornbook.catalogue.picture.Pictures;
import hornbook.viewer.diagnose.DiagnoseModel;
import hornbook.viewer.diagnose.DiagnosePane;
import hornbook.viewer.hornmap.CupsPane;
import hornbook.viewer.widget.Words;
import hornbook.viewer.window.Screen;
import hornbook.viewer.window.ScreenName;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The horn in hand: what to look at next at the left, what it may be in the middle, the brief at the right. */
public final class BenchScreen implements Screen {
    private final BenchModel model;
    private final Pictures pictures = new Pictures();
    private final BorderPane root = new BorderPane();
    private final HornStrip strip;
    private final LookPane looking;
    private final LookList choosing;
    private final CandidatesPane candidates;
    private final AnswersPane answers;
    private final BriefPane brief;
    private final WrongSide wrong;
    private final Columns columns;
    private final Label said = Words.text("", "bench-said");
    private final Button undo = new Button("Undo");
    private final HBox message = new HBox(said, undo);

    private BenchView.Side drawn = new BenchView.Side.Look();

    /**
     * @param wrong what is wrong with the horn
     * @param pull shows a drawer in its cabinet
     * @param openJob opens the card of a job
     * @param where asks into which file the brief is to be printed
     */
    public BenchScreen(
            BenchModel model,
            DiagnoseModel wrong,
            Consumer<String> pull,
            Consumer<String> openJob,
            Supplier<Optional<Path>> where) {
        this.model = model;
        strip = new HornStrip(model);
        looking = new LookPane(model, pictures);
        choosing = new LookList(model);
        candidates = new CandidatesPane(model);
        answers = new AnswersPane(model);
        this.wrong = new WrongSide(wrong, new DiagnosePane(wrong, pull, model::back));
        brief = new BriefPane(
                new BriefNodes(model, pull, openJob), () -> where.get().ifPresent(model.deeds()::print));
        root.getStyleClass().add("bench");
        root.getStylesheets()
                .add(Objects.requireNonNull(BenchScreen.class.getResource("bench.css"))
                        .toExternalForm());
        VBox middle = new VBox(candidates, answers);
        middle.getStyleClass().add("middle-column");
        VBox.setVgrow(candidates, Priority.ALWAYS);
        columns = new Columns(looking, middle, brief);
        layOut();
        root.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
        model.onChange(this::draw);
    }

    /** @param open asks what on hand fits a model, by its id */
    public void onFit(Consumer<String> open) {
        brief.onFit(() -> model.view().likeliest().ifPresent(open));
    }

    private void layOut() {
        message.getStyleClass().add("message");
        undo.setMinWidth(Region.USE_PREF_SIZE);
        undo.setOnAction(pressed -> model.deeds().undo());
        HBox.setHgrow(said, Priority.ALWAYS);
        said.setMaxWidth(Double.MAX_VALUE);
        root.setTop(new VBox(strip, message));
        root.setCenter(columns);
    }

    @Override
    public ScreenName name() {
        return ScreenName.BENCH;
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
        root.requestFocus();
        if (drawn instanceof BenchView.Side.Look) {
            looking.focusFirst();
        }
    }

    @Override
    public void changed(java.util.Set<String> kinds) {
        model.refresh();
    }

    @Override
    public boolean back() {
        return model.back();
    }

    private void draw(BenchView view) {
        strip.show(view);
        said.setText(view.said());
        message.setVisible(!view.said().isEmpty());
        message.setManaged(message.isVisible());
        undo.setVisible(view.undo() != null);
        Weighed weighed = view.weighed();
        if (weighed != null) {
            Phrases phrases = new Phrases(weighed.catalogue());
            looking.show(view, phrases);
            candidates.show(view, phrases);
            answers.show(view, phrases);
            brief.show(view, phrases);
            side(view, phrases);
        }
    }

    private void side(BenchView view, Phrases phrases) {
        boolean other = !view.side().equals(drawn);
        drawn = view.side();
        switch (view.side()) {
            case BenchView.Side.Look _ -> {
                columns.left(looking);
                if (other) {
                    looking.focusFirst();
                }
            }
            case BenchView.Side.Choose _ -> {
                choosing.show(view, phrases);
                columns.left(choosing);
            }
            case BenchView.Side.Here(var horns) when other -> columns.left(new HerePane(model, horns, phrases));
            case BenchView.Side.Confirm it when other -> columns.left(new ConfirmPane(model, it, view.horn()));
            case BenchView.Side.Cups(var map) when other -> columns.left(cups(map));
            case BenchView.Side.Entry _
            when other ->
                columns.left(new EntryPane(
                        model, view, Objects.requireNonNull(view.weighed()).catalogue()));
            case BenchView.Side.Wrong _ when other -> columns.left(wrong.of(view));
            default -> {}
        }
    }

    private Node cups(HornMap map) {
        CupsPane cups = new CupsPane(map, pictures);
        VBox.setVgrow(cups, Priority.ALWAYS);
        Platform.runLater(cups::focus);
        return new VBox(ConfirmPane.head("Cups of the first", model), cups);
    }

    /**
     * Digits press cards, 0 is can't tell; Enter takes what is marked; letters stand on the tiles. None is in the word with which
     * a label's code begins, so a reader does nothing here.
     */
    private void pressed(KeyEvent key) {
        boolean writing = key.getTarget() instanceof TextInputControl;
        if (writing || key.isAltDown() || key.isShortcutDown()) {
            return;
        }
        if (key.getCode() == KeyCode.C) {
            model.cups();
            key.consume();
        }
        if (!(drawn instanceof BenchView.Side.Look)) {
            return;
        }
        if (key.getCode().isDigitKey()) {
            digit(digitOf(key));
        } else {
            switch (key.getCode()) {
                case S -> model.skip();
                case BACK_SPACE -> model.takeBackLast();
                case ENTER -> model.done();
                default -> {
                    return;
                }
            }
        }
        key.consume();
    }

    private static int digitOf(KeyEvent key) {
        String name = key.getCode().getName();
        return name.charAt(name.length() - 1) - '0';
    }

    private void digit(int digit) {
        if (digit == 0) {
            model.cannotTell();
        } else {
            looking.press(digit);
        }
    }
}
