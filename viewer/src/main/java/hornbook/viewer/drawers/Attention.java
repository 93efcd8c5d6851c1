package hornbook.viewer.drawers;

import hornbook.shared.shop.LabelState;
import hornbook.shared.stock.CabinetPlan;
import hornbook.shared.stock.DrawerFront;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;

/** What wants a hand in the cabinet in view; pressed, it lights the drawers meant. */
final class Attention extends FlowPane {
    private final Consumer<Set<String>> light;
    private final Button look = new Button("Look through this cabinet  G");

    Attention(Consumer<Set<String>> light, Runnable lookThrough) {
        this.light = light;
        getStyleClass().add("acts");
        look.setId("look-through");
        look.setOnAction(pressed -> lookThrough.run());
    }

    void show(CabinetPlan plan) {
        getChildren().setAll(look);
        add(plan, "\u2260 label wrong", front -> front.labelState() == LabelState.DRIFTED);
        add(plan, "no label", front -> front.labelState() == LabelState.NONE);
        add(plan, "dashed: not looked through for two years", DrawerFront::unsure);
        add(plan, "empty", DrawerFront::empty);
    }

    private void add(CabinetPlan plan, String words, Predicate<DrawerFront> which) {
        Set<String> drawers =
                plan.drawers().stream().filter(which).map(DrawerFront::id).collect(Collectors.toUnmodifiableSet());
        if (drawers.isEmpty()) {
            return;
        }
        Button button = new Button(drawers.size() + "  " + words);
        button.getStyleClass().add("attention");
        button.setAccessibleText("Light " + drawers.size() + " drawers: " + words);
        button.setOnAction(pressed -> light.accept(drawers));
        getChildren().add(button);
    }
}
