package hornbook.viewer.gauges;

import hornbook.shared.measure.Length;
import hornbook.shared.thread.ThreadAnswer;
import hornbook.shared.thread.ThreadAnswer.LikelyThread;
import hornbook.shared.thread.ThreadAnswer.LookAlike;
import hornbook.viewer.widget.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** A thread answer as it is set on the screen: what it is, what it looks like, what not to put in, what comes next. */
final class ThreadAnswers {
    private static final double WORTH_A_BAR = 0.01;
    private static final int MOST_SHOWN = 6;

    private final ThreadAnswer answer;
    private final @Nullable Overlay overlay;
    private final List<Node> nodes = new ArrayList<>();

    /** @param overlay the look-alike to lay over it, where one binds */
    ThreadAnswers(ThreadAnswer answer, @Nullable Overlay overlay) {
        this.answer = answer;
        this.overlay = overlay;
    }

    List<Node> nodes() {
        likely();
        answer.apart()
                .forEach(a -> say(
                        a.one() + " or " + a.other() + ": " + a.look()
                                + (a.withGaugeInHand() ? "" : ". Calliper and pitch gauge cannot tell."),
                        "heed"));
        answer.threads().stream().findFirst().ifPresent(this::picture);
        lookAlikes();
        work();
        return nodes;
    }

    private void likely() {
        if (answer.threads().isEmpty()) {
            say("No standard thread fits.", "big");
            if (!answer.nearest().isEmpty()) {
                say("Nearest: " + String.join(", ", answer.nearest()), "said");
            }
        }
        answer.threads().stream()
                .filter(t -> t.probability() >= WORTH_A_BAR)
                .limit(MOST_SHOWN)
                .forEach(t -> nodes.add(bar(t)));
        answer.stripped()
                .forEach(s -> say(
                        String.format(
                                Locale.ROOT,
                                "It may have been %s with %.0f %% of its thread left.",
                                s.designation(),
                                s.percentLeft()),
                        "said"));
    }

    private static Node bar(LikelyThread thread) {
        ProgressBar bar = new ProgressBar(thread.probability());
        bar.getStyleClass().add("odds");
        String chance = String.format(Locale.ROOT, "%.0f in 100", 100 * thread.probability());
        VBox words = new VBox(
                Words.text(thread.designation() + "   " + chance, "thread-name"),
                Words.text(
                        thread.standard() + ", pitch " + thread.pitch()
                                + thread.note()
                                        .map(note -> ". " + Words.sentence(note))
                                        .orElse(""),
                        "sizes"));
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox row = new HBox(bar, words);
        row.getStyleClass().add("odds-row");
        return row;
    }

    private void picture(LikelyThread thread) {
        nodes.add(ProfileDrawing.of(profile(thread)));
    }

    private static Profile profile(LikelyThread thread) {
        return new Profile(thread.pitch().mm(), thread.major().mm(), thread.angle());
    }

    private void lookAlikes() {
        if (answer.lookAlikes().isEmpty()) {
            return;
        }
        nodes.add(Sheet.heading("What would start and then bind"));
        if (overlay != null) {
            nodes.add(ProfileDrawing.of(overlay.screw(), overlay.hole(), overlay.bindsAfterTurns()));
            say(
                    "The line is the hole, " + overlay.holeName() + "; the metal is the screw, " + overlay.screwName()
                            + ". It binds at the red line.",
                    "sizes");
        }
        answer.lookAlikes().stream()
                .limit(MOST_SHOWN)
                .forEach(l -> say("Screw " + l.screw() + " in a hole " + l.hole() + ": " + binding(l), "said"));
    }

    private static String binding(LookAlike alike) {
        return alike.bindsAfterTurns()
                        .map(turns -> String.format(Locale.ROOT, "after %.1f turns. ", turns))
                        .orElse("")
                + Words.sentence(alike.note());
    }

    private void work() {
        if (!answer.limits().isEmpty() || !answer.tapDrills().isEmpty()) {
            nodes.add(Sheet.heading("To make it"));
        }
        answer.limits()
                .forEach(l -> say(
                        l.designation() + " " + l.fit() + ": screw "
                                + range(l.screwMajor().least(), l.screwMajor().most()) + ", hole "
                                + range(l.holeMinor().least(), l.holeMinor().most()),
                        "said"));
        answer.tapDrills()
                .forEach(d -> say(
                        String.format(
                                Locale.ROOT,
                                "%s: tap drill %s, %s, leaves %.0f %% of thread",
                                d.designation(),
                                d.drill(),
                                d.diameter(),
                                d.percent()),
                        "said"));
        if (!answer.nextUp().isEmpty() || !answer.notUp().isEmpty()) {
            nodes.add(Sheet.heading("If the hole is stripped"));
        }
        answer.nextUp()
                .forEach(n -> say(
                        n.designation() + ": "
                                + n.drill().map(d -> "drill " + d).orElse("tap it as it is") + ". "
                                + Words.sentence(n.note()),
                        "said"));
        answer.notUp().forEach(n -> say("Not " + n.designation() + ": " + n.why(), "sizes"));
    }

    private static String range(Length least, Length most) {
        return least.inMillimetres() + " to " + most.inMillimetres();
    }

    private void say(String words, String style) {
        nodes.add(Words.text(words, style));
    }
}
