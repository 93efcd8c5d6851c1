package hornbook.viewer.exchange;

import hornbook.shared.exchange.SheetKind;
import hornbook.viewer.widget.Words;
import java.util.function.Consumer;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import org.jspecify.annotations.Nullable;

/** What the rows of a list are, or that it is a whole export. */
final class KindChoice extends FlowPane {
    private final ToggleGroup group = new ToggleGroup();

    KindChoice(Consumer<@Nullable SheetKind> choose) {
        getStyleClass().add("line");
        getChildren().add(Words.text("Each row is", "ask-title"));
        add("a drawer", SheetKind.DRAWERS, choose);
        add("parts in a drawer", SheetKind.LOTS, choose);
        add("a horn", SheetKind.HORNS, choose);
        add("a job", SheetKind.JOBS, choose);
        add("hours worked", SheetKind.HOURS, choose);
        add("a supplier", SheetKind.SUPPLIERS, choose);
        add("a folder that Hornbook wrote", null, choose);
    }

    private void add(String words, @Nullable SheetKind kind, Consumer<@Nullable SheetKind> choose) {
        ToggleButton button = new ToggleButton(words);
        button.setToggleGroup(group);
        button.setUserData(kind);
        button.setId("kind-" + (kind == null ? "whole" : kind.word()));
        button.setOnAction(pressed -> {
            button.setSelected(true);
            choose.accept(kind);
        });
        getChildren().add(button);
    }

    void show(@Nullable SheetKind kind) {
        group.getToggles().stream()
                .filter(toggle -> toggle.getUserData() == kind)
                .forEach(toggle -> toggle.setSelected(true));
    }
}
