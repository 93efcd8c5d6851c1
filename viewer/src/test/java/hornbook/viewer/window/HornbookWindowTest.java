package hornbook.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.AccessibleAttribute;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The real window, driven by keys and clicks as a person would. */
class HornbookWindowTest {
    @TempDir
    Path settings;

    private final List<String> said = new ArrayList<>();
    private HornbookWindow window;

    @BeforeAll
    static void start() {
        Fx.start();
    }

    @BeforeEach
    void open() {
        window = Fx.on(() -> {
            List<Screen> screens =
                    Stream.of(ScreenName.values()).map(this::screen).toList();
            HornbookWindow opened = new HornbookWindow("Hornbook", settings);
            opened.present(new Shell("The Warm Room", screens));
            opened.show();
            return opened;
        });
        Fx.settle();
    }

    @AfterEach
    void close() {
        Fx.run(() -> window.stage().hide());
    }

    @Test
    void typingInTheBoxGoesToTheScreenThatFinds() {
        press(KeyCode.SLASH);
        press(KeyCode.R, KeyCode.O, KeyCode.D);
        press(KeyCode.DOWN);
        press(KeyCode.ENTER);
        assertThat(said).endsWith("shown Find", "typed r", "typed ro", "typed rod", "step 1", "open");
    }

    @Test
    void altAndADigitShowsAScreenAndEscapeGoesBack() {
        with(KeyCode.ALT, KeyCode.DIGIT5);
        assertThat(shown()).isEqualTo("Jobs");
        press(KeyCode.ESCAPE);
        assertThat(shown()).isEqualTo("Bench");
    }

    @Test
    void onAScreenTheKeysAreTheScreensAndNotTheBoxes() {
        with(KeyCode.CONTROL, KeyCode.K);
        with(KeyCode.ALT, KeyCode.DIGIT5);
        press(KeyCode.G);
        assertThat(shown()).isEqualTo("Jobs");
        assertThat(said).noneMatch(each -> each.startsWith("typed"));
    }

    @Test
    void escapeFirstEmptiesTheBox() {
        with(KeyCode.CONTROL, KeyCode.K);
        press(KeyCode.R);
        press(KeyCode.ESCAPE);
        assertThat(said).endsWith("typed ");
        assertThat(shown()).isEqualTo("Find");
        press(KeyCode.ESCAPE);
        assertThat(shown()).isEqualTo("Bench");
    }

    @Test
    void everyTargetIsBroadEnoughAndSaysWhatItIs() {
        List<Control> targets =
                controls(scene().getRoot()).filter(c -> c.isFocusTraversable()).toList();
        assertThat(targets).hasSizeGreaterThan(9);
        assertThat(targets).allSatisfy(control -> {
            assertThat(control.getHeight()).as(control.toString()).isGreaterThanOrEqualTo(44);
            Object text = control.queryAccessibleAttribute(AccessibleAttribute.TEXT);
            assertThat(control.getAccessibleText() == null ? text : control.getAccessibleText())
                    .asString()
                    .isNotBlank();
        });
    }

    @Test
    void theRailMarksTheScreenInView() {
        ToggleButton drawers = (ToggleButton) scene().lookup("#rail-3");
        Fx.run(drawers::fire);
        Fx.run(drawers::fire);
        assertThat(drawers.isSelected()).isTrue();
        assertThat(shown()).isEqualTo("Drawers");
    }

    @Test
    void itCanBeSeenInEveryLook() {
        for (Look look : Look.values()) {
            Path picture = Fx.picture(scene(), "shell-" + look.name().toLowerCase(java.util.Locale.ROOT));
            assertThat(picture).isNotEmptyFile();
            Fx.run(() -> ((javafx.scene.control.Button) scene().lookup(".look")).fire());
        }
        assertThat(WindowSettings.read(settings).look()).isEqualTo(Look.SYSTEM);
    }

    private String shown() {
        return Fx.on(() -> ((InView) ((Shell) scene().getRoot()).getCenter())
                .getChildren().stream()
                        .filter(Node::isVisible)
                        .map(node -> ((Label) node).getText())
                        .findFirst()
                        .orElse(""));
    }

    private Scene scene() {
        return window.stage().getScene();
    }

    private static Stream<Control> controls(Node node) {
        Stream<Control> self = node instanceof Control control ? Stream.of(control) : Stream.empty();
        Stream<Node> children = node instanceof Parent parent ? parent.getChildrenUnmodifiable().stream() : Stream.of();
        return Stream.concat(self, children.flatMap(HornbookWindowTest::controls));
    }

    private void press(KeyCode... keys) {
        for (KeyCode key : keys) {
            Fx.run(() -> new Robot().keyType(key));
            Fx.settle();
        }
    }

    private void with(KeyCode held, KeyCode key) {
        Fx.run(() -> {
            Robot robot = new Robot();
            robot.keyPress(held);
            robot.keyType(key);
            robot.keyRelease(held);
        });
        Fx.settle();
    }

    private Screen screen(ScreenName name) {
        Label node = new Label(name.title());
        return name == ScreenName.FIND ? new Finding(node, said) : new Plain(name, node);
    }

    private record Plain(ScreenName name, Node node) implements Screen {}

    private record Finding(Node node, List<String> said) implements Searching {
        @Override
        public ScreenName name() {
            return ScreenName.FIND;
        }

        @Override
        public void shown() {
            said.add("shown Find");
        }

        @Override
        public void typed(String text) {
            said.add("typed " + text);
        }

        @Override
        public void step(int rows) {
            said.add("step " + rows);
        }

        @Override
        public void open() {
            said.add("open");
        }
    }
}
