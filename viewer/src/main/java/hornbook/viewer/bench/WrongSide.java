package hornbook.viewer.bench;

import hornbook.catalogue.identify.Candidate;
import hornbook.catalogue.identify.Seen;
import hornbook.viewer.diagnose.Complaint;
import hornbook.viewer.diagnose.DiagnoseModel;
import hornbook.viewer.diagnose.DiagnosePane;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;

/** What is wrong with the horn in hand: asked with the words of its job, or else with those that are typed. */
record WrongSide(DiagnoseModel model, DiagnosePane pane) {
    /** So likely that what was found on its like counts for it. */
    private static final double LIKELY = 0.8;

    Node of(BenchView view) {
        InHand horn = view.horn();
        if (horn.job() != null) {
            model.about(horn.job());
        } else {
            model.about(new Complaint("", model(view), instrument(horn), null));
        }
        Platform.runLater(pane::focus);
        return pane;
    }

    private static @Nullable String model(BenchView view) {
        Weighed weighed = view.weighed();
        List<Candidate> first = weighed == null ? List.of() : weighed.answer().candidates();
        return first.isEmpty() || first.getFirst().probability() < LIKELY
                ? null
                : first.getFirst().id();
    }

    private static String instrument(InHand horn) {
        return horn.looks(BenchModel.MEMBER).stream()
                .filter(Seen.OneOf.class::isInstance)
                .map(seen -> ((Seen.OneOf) seen).values().getFirst())
                .findFirst()
                .orElse("alto");
    }
}
