package hornbook.viewer.jobs;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** What can be done now: large what comes next, below in one row all the rest by groups. Each tells its letter. */
final class ActBar extends VBox {
    private final Consumer<Act> begin;
    private final FlowPane next = new FlowPane();
    private final FlowPane groups = new FlowPane();
    private List<Act> drawnNext = List.of();
    private List<Act> drawn = List.of();

    ActBar(Consumer<Act> begin) {
        this.begin = begin;
        getStyleClass().add("act-bar");
        next.getStyleClass().addAll("act-row", "act-next");
        groups.getStyleClass().add("act-row");
        getChildren().addAll(next, groups);
    }

    void show(@Nullable JobPage page) {
        List<Act> first = NextActs.of(page);
        List<Act> acts = Act.fitting(page);
        if (!first.equals(drawnNext)) {
            drawnNext = first;
            next.getChildren().setAll(first.stream().map(this::button).toList());
        }
        if (!acts.equals(drawn)) {
            drawn = acts;
            Stream<Node> menus = Stream.of(ActGroup.values())
                    .map(group -> group(group, acts))
                    .flatMap(Optional::stream);
            groups.getChildren()
                    .setAll(Stream.concat(Stream.of(button(Act.TAKE_IN)), menus).toList());
        }
    }

    private Button button(Act act) {
        Button button = new Button(words(act));
        button.setId("act-" + act.letter());
        button.setAccessibleText(act.words());
        button.setAccessibleHelp("Key " + letter(act));
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(pressed -> begin.accept(act));
        return button;
    }

    private Optional<Node> group(ActGroup group, List<Act> acts) {
        List<MenuItem> items = acts.stream()
                .filter(act -> act != Act.TAKE_IN && act.group() == group)
                .map(this::item)
                .toList();
        MenuButton menu = new MenuButton(group.words());
        menu.setId("acts-" + group.name().toLowerCase(java.util.Locale.ROOT));
        menu.setMinWidth(USE_PREF_SIZE);
        menu.getItems().setAll(items);
        return items.isEmpty() ? Optional.empty() : Optional.of(menu);
    }

    private MenuItem item(Act act) {
        MenuItem item = new MenuItem(words(act));
        item.setOnAction(pressed -> begin.accept(act));
        return item;
    }

    private static String words(Act act) {
        return act.words() + "  " + letter(act);
    }

    private static char letter(Act act) {
        return Character.toUpperCase(act.letter());
    }
}
