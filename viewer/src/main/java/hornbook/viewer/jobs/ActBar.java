package hornbook.viewer.jobs;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import org.jspecify.annotations.Nullable;

/** What can be done now, each act a button that tells its letter. */
final class ActBar extends FlowPane {
    private final Consumer<Act> begin;
    private List<Act> drawn = List.of();

    ActBar(Consumer<Act> begin) {
        this.begin = begin;
        getStyleClass().add("act-bar");
    }

    void show(@Nullable JobPage page) {
        List<Act> acts = Act.fitting(page);
        if (!acts.equals(drawn)) {
            drawn = acts;
            getChildren().setAll(acts.stream().map(this::button).toList());
        }
    }

    private Button button(Act act) {
        Button button = new Button(act.words() + "  " + Character.toUpperCase(act.letter()));
        button.setId("act-" + act.letter());
        button.setAccessibleText(act.words());
        button.setAccessibleHelp("Key " + Character.toUpperCase(act.letter()));
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(pressed -> begin.accept(act));
        return button;
    }
}
