package hornbook.viewer.jobs;

import hornbook.viewer.diagnose.DiagnoseModel;
import hornbook.viewer.diagnose.DiagnosePane;
import hornbook.viewer.honesty.HonestyModel;
import hornbook.viewer.honesty.HonestyPane;
import hornbook.viewer.year.YearModel;
import hornbook.viewer.year.YearPane;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;

/** What takes the place of the job in view for a while: what is wrong with its horn, how honest estimates were, the year. */
final class BesideJob {
    private final DiagnoseModel wrong;
    private final DiagnosePane wrongPane;
    private final HonestyModel honesty;
    private final HonestyPane honestyPane;
    private final YearModel year;
    private final YearPane yearPane;
    private String job = "";
    private @Nullable Expected expected;

    /**
     * @param pull shows a drawer in its cabinet
     * @param leave brings the job into view again
     */
    BesideJob(DiagnoseModel wrong, HonestyModel honesty, YearModel year, Consumer<String> pull, Runnable leave) {
        this.wrong = wrong;
        this.wrongPane = new DiagnosePane(wrong, pull, leave);
        this.honesty = honesty;
        this.honestyPane = new HonestyPane(honesty, leave);
        this.year = year;
        this.yearPane = new YearPane(year, leave);
    }

    Node open(Act act, JobsView view) {
        job = job(view);
        expected = view.expected();
        if (act == Act.HONESTY) {
            honesty.ask();
            return honestyPane;
        }
        if (act == Act.YEAR) {
            year.ask();
            return yearPane;
        }
        wrong.about(job);
        return wrongPane;
    }

    void focus() {
        Platform.runLater(() -> {
            if (wrongPane.getScene() != null) {
                wrongPane.focus();
            } else if (yearPane.getScene() != null) {
                yearPane.takeKeyboard();
            } else {
                honestyPane.requestFocus();
            }
        });
    }

    boolean is(Node shown) {
        return shown == wrongPane || shown == honestyPane || shown == yearPane;
    }

    /** Another job is in view since, or its work was listed: that is what a person wants to see now. */
    boolean past(JobsView view) {
        if (job.isEmpty()) {
            job = job(view);
        }
        return !job.equals(job(view)) || !Objects.equals(expected, view.expected());
    }

    void leave() {
        honesty.stop();
        year.stop();
    }

    private static String job(JobsView view) {
        return view.page() == null ? "" : view.page().card().id();
    }
}
