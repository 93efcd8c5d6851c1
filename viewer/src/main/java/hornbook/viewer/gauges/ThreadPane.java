package hornbook.viewer.gauges;

import hornbook.viewer.gauges.ThreadAsked.Field;
import hornbook.viewer.widget.Words;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;

/** Which thread: what was measured at the left, what it can be at the right. */
final class ThreadPane implements Pane {
    private final AskField size;
    private final Sheet sheet;

    ThreadPane(ThreadModel model) {
        size = new AskField(
                "ask-diameter",
                "Across the crests",
                "2.95   .116 in",
                text -> model.change(a -> a.with(Field.SIZE, text)));
        HBox count = new HBox(
                new AskField("ask-turns", "Turns", "5", text -> model.change(a -> a.with(Field.TURNS, text))),
                new AskField("ask-over", "over", "3.0 mm", text -> model.change(a -> a.with(Field.OVER, text))));
        count.getStyleClass().add("pair");
        sheet = new Sheet(
                sides(model),
                size,
                Words.text("The pitch, one way of three:", "quiet"),
                count,
                new AskField(
                        "ask-pitch",
                        "or crest to crest",
                        "0.6 mm",
                        text -> model.change(a -> a.with(Field.PITCH, text))),
                new AskField(
                        "ask-tpi",
                        "or threads to the inch, by gauge",
                        "40",
                        text -> model.change(a -> a.with(Field.TPI, text))),
                new AskField(
                        "ask-form",
                        "Angle, if you can see it",
                        "60",
                        text -> model.change(a -> a.with(Field.FORM, text))),
                new AskField(
                        "ask-wall",
                        "Metal round a stripped hole",
                        "1.2 mm",
                        text -> model.change(a -> a.with(Field.WALL, text))));
        model.onChange(view -> sheet.answer(answers(view)));
    }

    private static Node sides(ThreadModel model) {
        ToggleGroup one = new ToggleGroup();
        HBox sides = new HBox(
                side("Screw", "ask-screw", one, true, () -> model.change(a -> a.inHole(false))),
                side("Hole", "ask-hole", one, false, () -> model.change(a -> a.inHole(true))));
        sides.getStyleClass().add("pair");
        return sides;
    }

    private static ToggleButton side(String title, String id, ToggleGroup one, boolean first, Runnable act) {
        ToggleButton side = new ToggleButton(title);
        side.setId(id);
        side.setToggleGroup(one);
        side.setSelected(first);
        side.setOnAction(pressed -> {
            side.setSelected(true);
            act.run();
        });
        return side;
    }

    private static List<Node> answers(ThreadView view) {
        if (view.trouble() != null) {
            return List.of(Words.text(view.trouble(), "banner"));
        }
        if (view.answer() != null) {
            return new ThreadAnswers(view.answer(), view.overlay()).nodes();
        }
        return List.of(Words.text(
                view.asked().blank()
                        ? "Measure across the crests; count turns over a length for the pitch."
                        : "Looking in the tables of threads\u2026",
                "quiet"));
    }

    @Override
    public String title() {
        return "Thread";
    }

    @Override
    public Node node() {
        return sheet;
    }

    @Override
    public void focus() {
        size.focus();
    }
}
