package hornbook.viewer.exchange;

import hornbook.shared.exchange.ImportReport;
import hornbook.shared.exchange.SheetKind;
import hornbook.shared.exchange.SheetLook;
import hornbook.viewer.setting.SettingPane;
import hornbook.viewer.widget.Words;
import hornbook.viewer.window.Screen;
import hornbook.viewer.window.ScreenName;
import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** Lists in, everything out; below, how the shop is set. */
public final class ExchangeScreen implements Screen {
    private final ExchangeModel model;
    private final SettingPane settings;
    private final VBox steps = new VBox();
    private final ScrollPane root = new ScrollPane(steps);
    private final KindChoice kinds;
    private final TextField from = new TextField();
    private final Button choose = new Button("Choose\u2026");
    private final Label read = Words.text("", "quiet");
    private final ColumnRows columns;
    private final Label said = Words.text("", "found");
    private final Label trouble = Words.text("", "stop");
    private final Button tryIt = new Button("Try it, change nothing");
    private final Button takeIt = new Button("Take the good rows");
    private final Button fix = new Button("Rows to fix\u2026");
    private final ReportPane report = new ReportPane();

    private @Nullable ImportReport told;

    public ExchangeScreen(ExchangeModel model, SettingPane settings) {
        this.model = model;
        this.settings = settings;
        kinds = new KindChoice(model::kind);
        columns = new ColumnRows(model::column);
        steps.getStyleClass().add("exchange");
        steps.getStylesheets()
                .add(Objects.requireNonNull(ExchangeScreen.class.getResource("exchange.css"))
                        .toExternalForm());
        root.setFitToWidth(true);
        root.getStyleClass().add("exchange-scroll");
        from.setId("from");
        from.setPromptText("The file: CSV, as a spreadsheet program saves it");
        from.setOnAction(entered -> path(from.getText()).ifPresent(model::from));
        HBox.setHgrow(from, Priority.ALWAYS);
        choose.setOnAction(pressed ->
                (model.view().kind() == null ? Files.folder(root) : Files.open(root)).ifPresent(model::from));
        act(tryIt, "try-it", model::tryIt);
        act(takeIt, "take-it", model::takeIt);
        act(
                fix,
                "rows-to-fix",
                () -> (model.view().kind() == null ? Files.folder(root) : Files.save(root, "rows-to-fix.csv"))
                        .ifPresent(model::rowsToFix));
        HBox file = new HBox(from, choose);
        file.getStyleClass().add("line");
        FlowPane buttons = new FlowPane(tryIt, takeIt, fix);
        buttons.getStyleClass().add("line");
        steps.getChildren()
                .addAll(
                        Words.text("Bring in what you have", "card-title"),
                        kinds,
                        file,
                        read,
                        columns,
                        trouble,
                        buttons,
                        report,
                        new OutPane(model),
                        said,
                        settings);
        model.onChange(this::draw);
    }

    private static void act(Button button, String id, Runnable act) {
        button.setId(id);
        button.setOnAction(pressed -> act.run());
    }

    static Optional<Path> path(String written) {
        try {
            return written.isBlank() ? Optional.empty() : Optional.of(Path.of(written.strip()));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    @Override
    public ScreenName name() {
        return ScreenName.IN_OUT;
    }

    @Override
    public Node node() {
        return root;
    }

    @Override
    public void shown() {
        settings.refresh();
    }

    @Override
    public void changed(Set<String> kinds) {
        if (kinds.contains("setting")) {
            settings.refresh();
        }
    }

    private void draw(ExchangeView view) {
        kinds.show(view.kind());
        Path file = view.from();
        if (file != null && path(from.getText()).filter(file::equals).isEmpty()) {
            from.setText(file.toString());
        }
        draw(view.look(), view.kind());
        put(trouble, view.trouble());
        put(said, view.doing() != null ? view.doing() : view.said());
        tryIt.setDisable(!view.ready());
        takeIt.setDisable(!view.ready());
        ImportReport came = view.report();
        shown(report, came != null);
        shown(fix, came != null && came.refused().stream().anyMatch(no -> no.row() > 0));
        if (came != null) {
            report.show(came, view.dry());
        }
        if (came != null && came != told) {
            Platform.runLater(this::bringReportIntoView);
        }
        told = came;
    }

    /** What was read while its button was away had the view run on to what stands below. */
    private void bringReportIntoView() {
        root.layout();
        double room = root.getViewportBounds().getHeight();
        double over = steps.getHeight() - room;
        if (over > 0) {
            root.setVvalue(Math.clamp((report.getBoundsInParent().getMinY() - room / 4) / over, 0, 1));
        }
    }

    private void draw(@Nullable SheetLook look, @Nullable SheetKind kind) {
        if (look == null || kind == null) {
            put(read, null);
            shown(columns, false);
        } else {
            put(read, words(look));
            shown(columns, true);
            columns.show(kind, look);
        }
    }

    private static String words(SheetLook look) {
        String lacking = look.lacking().isEmpty()
                ? ""
                : "\nSay which column holds " + String.join(" and ", look.lacking()) + ".";
        return "Letters " + look.encoding() + ", cells apart by " + look.separator() + ", decimals: " + look.decimals()
                + ", days: " + look.dates() + "." + lacking;
    }

    private static void put(Label label, @Nullable String words) {
        label.setText(words == null ? "" : words);
        shown(label, words != null);
    }

    private static void shown(Node node, boolean yes) {
        node.setVisible(yes);
        node.setManaged(yes);
    }

    /** The system's own windows for naming files. */
    static final class Files {
        private Files() {}

        static Optional<Path> open(Node on) {
            return Optional.ofNullable(chooser("").showOpenDialog(on.getScene().getWindow()))
                    .map(File::toPath);
        }

        static Optional<Path> save(Node on, String name) {
            return Optional.ofNullable(
                            chooser(name).showSaveDialog(on.getScene().getWindow()))
                    .map(File::toPath);
        }

        static Optional<Path> folder(Node on) {
            return Optional.ofNullable(new javafx.stage.DirectoryChooser()
                            .showDialog(on.getScene().getWindow()))
                    .map(File::toPath);
        }

        private static javafx.stage.FileChooser chooser(String name) {
            javafx.stage.FileChooser chooser = new javafx.stage.FileChooser();
            chooser.setInitialFileName(name);
            return chooser;
        }
    }
}
