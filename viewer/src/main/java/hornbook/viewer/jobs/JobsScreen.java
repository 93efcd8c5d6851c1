package hornbook.viewer.jobs;

import hornbook.shared.job.JobCard.PhotoLine;
import hornbook.viewer.diagnose.DiagnoseModel;
import hornbook.viewer.honesty.HonestyModel;
import hornbook.viewer.window.FramedScreen;
import hornbook.viewer.window.ScreenName;
import hornbook.viewer.year.YearModel;
import java.io.File;
import java.util.function.Consumer;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.Node;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.stage.FileChooser;
import javafx.util.Duration;

/** The horns on the bench at the left, the job in view beside them. */
public final class JobsScreen extends FramedScreen {
    private final JobsModel model;
    private final BenchList bench;
    private final JobPane pane;
    private final Lens lens;
    private final Album album;

    private final BesideJob beside;
    private Consumer<String> fits = job -> {};
    private boolean asked;

    /**
     * Over one shop.
     *
     * @param wrong what is wrong with the horn of the job in view
     * @param honesty how honest past estimates were
     * @param year how the year was
     * @param pull shows a drawer in its cabinet
     */
    public JobsScreen(
            JobsModel model,
            Album album,
            DiagnoseModel wrong,
            HonestyModel honesty,
            YearModel year,
            Consumer<String> pull) {
        super(ScreenName.JOBS, "jobs", "jobs.css");
        this.model = model;
        beside = new BesideJob(wrong, honesty, year, pull, this::putAway);
        bench = new BenchList(this::open);
        pane = new JobPane(model, album, this::begin, this::take);
        lens = new Lens(this::putAway);
        this.album = album;
        frame().setLeft(bench);
        frame().setCenter(pane);
        frame().setFocusTraversable(true);
        frame().addEventHandler(KeyEvent.KEY_TYPED, this::typed);
        model.onChange(this::draw);
        Timeline tick = new Timeline(new KeyFrame(Duration.seconds(1), passed -> bench.tick()));
        tick.setCycleCount(Animation.INDEFINITE);
        frame().visibleProperty().subscribe(seen -> run(tick));
        frame().sceneProperty().subscribe(scene -> run(tick));
    }

    /** Only while it can be seen. */
    private void run(Timeline tick) {
        if (frame().isVisible() && frame().getScene() != null) {
            tick.play();
        } else {
            tick.stop();
        }
    }

    /** @param open asks what on hand fits the horn of a job, by the job's id */
    public void onFit(Consumer<String> open) {
        fits = open;
    }

    @Override
    protected void refresh() {
        model.inView().refresh();
    }

    @Override
    public void takeKeyboard() {
        Node shown = frame().getCenter();
        if (shown == pane) {
            frame().requestFocus();
        } else {
            shown.requestFocus();
        }
    }

    @Override
    public boolean back() {
        return putAway() || model.leave();
    }

    private void open(String job) {
        putAway();
        model.inView().open(job);
    }

    private void take(PhotoLine photo) {
        frame().setCenter(lens);
        lens.show(photo, album);
    }

    /** Puts away what took the place of the job; whether there was something. */
    private boolean putAway() {
        boolean up = frame().getCenter() != pane;
        if (up) {
            beside.leave();
            frame().setCenter(pane);
            takeKeyboard();
        }
        return up;
    }

    private void begin(Act act) {
        switch (act) {
            case PHOTO -> choosePhoto();
            case FIT -> fit();
            case WRONG, HONESTY, YEAR -> {
                frame().setCenter(beside.open(act, model.view()));
                beside.focus();
            }
            default -> model.begin(act);
        }
    }

    private void fit() {
        JobPage page = model.view().page();
        if (page != null) {
            fits.accept(page.card().id());
        }
    }

    private void choosePhoto() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Photo");
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter("Photos", "*.jpg", "*.jpeg", "*.png", "*.JPG"));
        File file = chooser.showOpenDialog(frame().getScene().getWindow());
        if (file != null) {
            model.photo(file.toPath());
        }
    }

    /** A letter begins its act, a digit brings that horn of the bench into view; not while something is written. */
    private void typed(KeyEvent key) {
        String sign = key.getCharacter();
        boolean writing = frame().getScene().getFocusOwner() instanceof TextInputControl;
        if (writing
                || frame().getCenter() != pane
                || sign.length() != 1
                || key.isShortcutDown()
                || key.isAltDown()
                || model.view().asks()) {
            return;
        }
        char letter = sign.charAt(0);
        if (Character.isDigit(letter)) {
            model.inView().openAt(letter - '0');
            key.consume();
        } else {
            Act.of(letter, model.view().page()).ifPresent(act -> {
                begin(act);
                key.consume();
            });
        }
    }

    private void draw(JobsView view) {
        bench.show(view);
        if (beside.is(frame().getCenter()) && beside.past(view)) {
            putAway();
        }
        pane.show(view, bench.elapsed());
        boolean asks = view.asks();
        // After a question, or when what had it was drawn anew, the keyboard is the screen's again, not nobody's.
        boolean nobodys = frame().getScene() != null && frame().getScene().getFocusOwner() == null;
        if (asked && !asks || nobodys) {
            frame().requestFocus();
        }
        asked = asks;
    }
}
