package hornbook.viewer.jobs;

import hornbook.viewer.window.Screen;
import hornbook.viewer.window.ScreenName;
import java.io.File;
import java.util.Objects;
import java.util.Set;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.stage.FileChooser;
import javafx.util.Duration;

/** The horns on the bench at the left, the job in view beside them. */
public final class JobsScreen implements Screen {
    private final JobsModel model;
    private final BorderPane root = new BorderPane();
    private final BenchList bench;
    private final JobPane pane;

    private boolean asked;

    public JobsScreen(JobsModel model) {
        this.model = model;
        root.getStyleClass().add("jobs");
        root.getStylesheets()
                .add(Objects.requireNonNull(JobsScreen.class.getResource("jobs.css"))
                        .toExternalForm());
        bench = new BenchList(model::open);
        pane = new JobPane(model, this::begin);
        root.setLeft(bench);
        root.setCenter(pane);
        root.setFocusTraversable(true);
        root.addEventHandler(KeyEvent.KEY_TYPED, this::typed);
        model.onChange(this::draw);
        Timeline tick = new Timeline(new KeyFrame(Duration.seconds(1), passed -> bench.tick()));
        tick.setCycleCount(Animation.INDEFINITE);
        root.sceneProperty().subscribe(scene -> {
            if (scene == null) {
                tick.stop();
            } else {
                tick.play();
            }
        });
    }

    @Override
    public ScreenName name() {
        return ScreenName.JOBS;
    }

    @Override
    public Node node() {
        return root;
    }

    @Override
    public void shown() {
        model.refresh();
        Platform.runLater(root::requestFocus);
    }

    @Override
    public void changed(Set<String> kinds) {
        model.refresh();
    }

    @Override
    public boolean back() {
        return model.leave();
    }

    private void begin(Act act) {
        if (act == Act.PHOTO) {
            choosePhoto();
        } else {
            model.begin(act);
        }
    }

    private void choosePhoto() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Photo");
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter("Photos", "*.jpg", "*.jpeg", "*.png", "*.JPG"));
        File file = chooser.showOpenDialog(root.getScene().getWindow());
        if (file != null) {
            model.photo(file.toPath());
        }
    }

    /** A letter begins its act, a digit brings that horn of the bench into view; not while something is written. */
    private void typed(KeyEvent key) {
        String sign = key.getCharacter();
        boolean writing = root.getScene().getFocusOwner() instanceof TextInputControl;
        if (writing
                || sign.length() != 1
                || key.isShortcutDown()
                || key.isAltDown()
                || model.view().asks()) {
            return;
        }
        char letter = sign.charAt(0);
        if (Character.isDigit(letter)) {
            model.openAt(letter - '0');
            key.consume();
        } else {
            Act.of(letter).ifPresent(act -> {
                begin(act);
                key.consume();
            });
        }
    }

    private void draw(JobsView view) {
        bench.show(view);
        pane.show(view, bench.elapsed());
        boolean asks = view.asks();
        // After a question the keyboard is the screen's again, not nobody's.
        if (asked && !asks) {
            root.requestFocus();
        }
        asked = asks;
    }
}
