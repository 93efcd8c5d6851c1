package hornbook.viewer;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.window.Fx;
import hornbook.viewer.window.HornbookWindow;
import hornbook.viewer.window.ScreenName;
import hornbook.viewer.window.Shell;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Whatever is pressed or left on a screen, the keyboard stays on the screen in view: on each a button of each sort is
 * pressed by Enter, then Esc steps back. Nothing is ever typed into the search box by it.
 */
class KeyboardStaysTest {
    /** What opens a window of the system's own. */
    private static final String SYSTEMS_OWN = ".*(\u2026|PDF|CSV|Print|[Pp]hoto|sheet|Ordered).*";

    @TempDir
    static Path folder;

    private static Workshop shop;
    private static HornbookWindow window;
    private static Shell shell;

    @BeforeAll
    static void open() {
        Fx.start();
        shop = DemoShop.in(folder.resolve("shop"));
        window = Fx.on(() -> {
            HornbookWindow made = new HornbookWindow("Hornbook", folder.resolve("look"));
            shell = new Screens(shop, Work.atOnce()).shell();
            made.present(shell);
            made.show();
            made.stage().requestFocus();
            return made;
        });
        Fx.settle();
    }

    @AfterAll
    static void close() {
        Fx.run(() -> window.stage().hide());
        shop.close();
    }

    @ParameterizedTest
    @EnumSource(
            value = ScreenName.class,
            names = {"FIND"},
            mode = EnumSource.Mode.EXCLUDE)
    void onTheScreenInView(ScreenName name) {
        Set<String> sorts = new HashSet<>();
        look(name);
        for (String id : ids(sorts)) {
            look(name);
            Node node = found(id);
            if (node == null) {
                continue;
            }
            Fx.run(node::requestFocus);
            press(KeyCode.ENTER, name + ", Enter on " + id);
            for (int step = 0; step < 3; step++) {
                press(KeyCode.ESCAPE, name + ", Esc after " + id);
            }
        }
        assertThat(sorts).as("sorts of buttons on " + name).isNotEmpty();
    }

    /** A letter after Esc on the Horn map was once a search. */
    @ParameterizedTest
    @EnumSource(
            value = ScreenName.class,
            names = {"HORN_MAP", "JOBS"})
    void lettersAfterEscapeAreTheScreens(ScreenName name) {
        Fx.run(() -> shell.go(ScreenName.BENCH));
        Fx.run(() -> shell.go(name));
        Fx.settle();
        press(KeyCode.DIGIT1, name + ", 1");
        press(KeyCode.ESCAPE, name + ", Esc");
        press(KeyCode.G, name + ", G");
        assertThat(((TextField) window.stage().getScene().lookup("#search")).getText())
                .isEmpty();
    }

    private static void look(ScreenName name) {
        Fx.run(() -> shell.go(ScreenName.FIND));
        Fx.run(() -> shell.go(name));
        Fx.settle();
        check("gone to " + name);
    }

    private static void press(KeyCode key, String when) {
        Fx.run(() -> new Robot().keyType(key));
        Fx.settle();
        check(when);
    }

    private static void check(String when) {
        Node owner = window.stage().getScene().getFocusOwner();
        boolean findIsShown = shown().getStyleClass().contains("find");
        boolean stays = findIsShown || isWithin(owner, shown()) || isWithin(owner, shell.getBottom());
        assertThat(stays).as(when + ": the keyboard is at " + owner).isTrue();
    }

    private static Node shown() {
        return ((Parent) shell.getCenter())
                .getChildrenUnmodifiable().stream()
                        .filter(Node::isVisible)
                        .findFirst()
                        .orElseThrow();
    }

    private static boolean isWithin(Node node, Node whole) {
        Node above = node;
        while (above != null && above != whole) {
            above = above.getParent();
        }
        return above != null;
    }

    /** One of each sort: same class, same styles, same first word. */
    private static List<String> ids(Set<String> sorts) {
        return Fx.on(() -> pressable(shown())
                .filter(node -> sorts.add(sort(node)))
                .map(KeyboardStaysTest::name)
                .toList());
    }

    private static Node found(String name) {
        return Fx.on(() -> pressable(shown())
                .filter(node -> name(node).equals(name))
                .findFirst()
                .orElse(null));
    }

    private static String sort(Node node) {
        return node.getClass() + " " + node.getStyleClass() + " "
                + (node instanceof Tile || node.getClass().getSimpleName().equals("DrawerButton")
                        ? ""
                        : words(node).split(" ", 2)[0]);
    }

    private static String name(Node node) {
        return node.getClass().getSimpleName() + " " + node.getId() + " " + words(node);
    }

    private static String words(Node node) {
        String words = node instanceof ButtonBase button ? button.getText() : node.getAccessibleText();
        return words == null ? "" : words;
    }

    private static Stream<Node> pressable(Node node) {
        if (!node.isVisible() || node.isDisabled() || node instanceof ComboBoxBase || node instanceof MenuButton) {
            return Stream.of();
        }
        boolean button = node instanceof ButtonBase || node instanceof Tile;
        if (button) {
            return words(node).matches(SYSTEMS_OWN) || !node.isFocusTraversable() ? Stream.of() : Stream.of(node);
        }
        return node instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream().flatMap(KeyboardStaysTest::pressable)
                : Stream.of();
    }
}
