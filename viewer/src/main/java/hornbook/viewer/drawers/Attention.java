package hornbook.viewer.drawers;

import hornbook.shared.shop.LabelState;
import hornbook.shared.stock.CabinetPlan;
import hornbook.shared.stock.DrawerFront;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;

/** What wants a hand in the cabinet in view, lit when pressed; and what can be done before it. */
final class Attention extends FlowPane {
    private final Consumer<Set<String>> light;
    private final DeskModel desk;
    private final Button look = new Button("Look through  G");
    private final MenuButton print = new MenuButton("Print labels");
    private final Button cabinet = new Button("New cabinet");

    Attention(DrawersModel model, DeskModel desk) {
        this.light = model::light;
        this.desk = desk;
        getStyleClass().add("acts");
        look.setId("look-through");
        look.setAccessibleText("Look through this cabinet, drawer by drawer");
        look.setOnAction(pressed -> model.lookThrough());
        print.setId("print-labels");
        cabinet.setId("new-cabinet");
        cabinet.setOnAction(pressed -> desk.cabinet(model::newest));
    }

    void show(CabinetPlan plan, Set<String> lit, List<String> laidAside) {
        getChildren().setAll(look);
        add(plan, "\u2260 label wrong", front -> front.labelState() == LabelState.DRIFTED);
        add(plan, "no label", front -> front.labelState() == LabelState.NONE);
        add(plan, "dashed: not seen for 2 years", DrawerFront::unsure);
        add(plan, "empty", DrawerFront::empty);
        print.setText(laidAside.isEmpty() ? "Print labels" : "Print labels (" + laidAside.size() + " laid aside)");
        print.getItems().clear();
        item("Those laid aside", laidAside);
        item("Those lit", ids(plan, front -> lit.contains(front.id())));
        item("This whole cabinet", ids(plan, front -> true));
        getChildren().addAll(print, cabinet);
    }

    private void item(String words, List<String> drawers) {
        if (!drawers.isEmpty()) {
            MenuItem item = new MenuItem(words + ": " + drawers.size());
            item.setOnAction(pressed -> desk.print(drawers));
            print.getItems().add(item);
        }
    }

    private static List<String> ids(CabinetPlan plan, Predicate<DrawerFront> which) {
        return plan.drawers().stream().filter(which).map(DrawerFront::id).toList();
    }

    private void add(CabinetPlan plan, String words, Predicate<DrawerFront> which) {
        Set<String> drawers = ids(plan, which).stream().collect(Collectors.toUnmodifiableSet());
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
