package hornbook.viewer.drawers;

import hornbook.shared.stock.CabinetPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;

/** The cabinets by name, with how many lit drawers each has. */
final class CabinetTabs extends FlowPane {
    private final Consumer<String> choose;

    CabinetTabs(Consumer<String> choose) {
        this.choose = choose;
        getStyleClass().add("cabinet-tabs");
    }

    void show(DrawersView view) {
        ToggleGroup group = new ToggleGroup();
        List<ToggleButton> tabs = new ArrayList<>(
                view.cabinets().stream().map(plan -> tab(plan, view, group)).toList());
        if (!tabs.isEmpty() || !view.shop().places().isEmpty()) {
            tabs.add(tab("Other places", "Hooks, shelves, tubes and parts horns", DrawersView.PLACES, view, group));
            tabs.add(tab("Tools", "Tools, and what their sets lack", DrawersView.TOOLS, view, group));
        }
        boolean hadFocus = getChildren().stream().anyMatch(node -> node.isFocused());
        getChildren().setAll(tabs);
        if (hadFocus) {
            tabs.stream().filter(ToggleButton::isSelected).findFirst().ifPresent(ToggleButton::requestFocus);
        }
    }

    private ToggleButton tab(CabinetPlan plan, DrawersView view, ToggleGroup group) {
        ToggleButton tab = new ToggleButton(plan.name());
        tab.setToggleGroup(group);
        tab.setSelected(plan.id().equals(view.chosen()));
        tab.setId("tab-" + plan.id());
        long lit = view.litIn(plan);
        if (lit > 0) {
            Label count = new Label(Long.toString(lit));
            count.getStyleClass().add("lit-count");
            tab.setGraphic(count);
            tab.setContentDisplay(javafx.scene.control.ContentDisplay.RIGHT);
        }
        String found =
                lit == 0 ? "" : ", " + lit + (lit == 1 ? " drawer holds" : " drawers hold") + " what you look for";
        tab.setAccessibleText(plan.name() + ", " + plan.where() + found);
        return choosing(tab, plan.id());
    }

    private ToggleButton tab(String title, String words, String id, DrawersView view, ToggleGroup group) {
        ToggleButton tab = new ToggleButton(title);
        tab.setToggleGroup(group);
        tab.setSelected(view.chosen().equals(id));
        tab.setId("tab-" + id);
        tab.setAccessibleText(words);
        return choosing(tab, id);
    }

    private ToggleButton choosing(ToggleButton tab, String id) {
        tab.setOnAction(pressed -> {
            tab.setSelected(true);
            choose.accept(id);
        });
        return tab;
    }
}
