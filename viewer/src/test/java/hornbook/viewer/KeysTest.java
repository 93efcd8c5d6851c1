package hornbook.viewer;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.shop.Lot;
import hornbook.shared.shop.PartUsed;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.window.Fx;
import hornbook.viewer.window.HornbookWindow;
import hornbook.viewer.window.ScreenName;
import hornbook.viewer.window.Shell;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The table of keys in DEVELOPERS.md, played in the real window exactly as it stands there, and counted: three keys, or
 * one reading of a label's code and two keys, from whatever screen.
 */
class KeysTest {
    private static final Pattern ROW = Pattern.compile("\\| ([^|]+) \\| ((?:`[^`]+` ?)+)\\|.*");
    private static final int MOST_KEYS = 3;

    @TempDir
    static Path folder;

    private static Workshop shop;
    private static HornbookWindow window;
    private static Shell shell;
    private static long before;

    @BeforeAll
    static void open() {
        Fx.start();
        shop = DemoShop.in(folder.resolve("shop"));
        shop.clocks().start("j-0238", "task-inspect", 1, "N.O.");
        before = shop.books().lastStanding().orElseThrow().number();
        window = Fx.on(() -> {
            HornbookWindow made = new HornbookWindow("Hornbook", folder.resolve("look"));
            shell = new Screens(shop, Work.atOnce()).shell();
            made.present(shell);
            made.show();
            made.stage().setWidth(1280);
            made.stage().setHeight(800);
            return made;
        });
        Fx.settle();
    }

    @AfterAll
    static void close() {
        Fx.run(() -> window.stage().hide());
        shop.close();
    }

    @BeforeEach
    void fromAnywhere() {
        Fx.run(() -> {
            window.stage().requestFocus();
            shell.go(ScreenName.FIND);
        });
        Fx.settle();
    }

    @AfterEach
    void takeBack() {
        for (int i = 0; i < 5; i++) {
            type(KeyCode.ESCAPE);
        }
        while (shop.books().lastStanding().orElseThrow().number() > before) {
            Fx.run(() -> shop.books().undoLast());
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "open a drawer, opened",
        "open a drawer without a reader, opened",
        "count what is in hand, counted",
        "count it without a reader, counted",
        "take one for the job, taken",
        "take one without a reader, taken",
    })
    void eachIsThreeKeysOrOneReadingAndTwo(String deed, String outcome) throws IOException {
        List<String> keys = keys(deed);
        boolean read = keys.contains("code");
        long pressed = keys.stream()
                .filter(key -> !key.equals("code") && !key.equals("words"))
                .count();
        assertThat(pressed).as(deed + " " + keys).isLessThanOrEqualTo(read ? MOST_KEYS - 1 : MOST_KEYS);
        keys.forEach(KeysTest::play);
        Fx.picture(scene(), "keys-" + deed.replace(' ', '-'));
        switch (outcome) {
            case "opened" -> assertThat(scene().lookup("#lot-lot-0262")).isNotNull();
            case "counted" -> assertThat(lots()).contains("7");
            default ->
                assertThat(shop.books().where(PartUsed.class, "job", "j-0238"))
                        .isNotEmpty()
                        .allMatch(part -> shop.books()
                                .find(Lot.class, part.lot())
                                .orElseThrow()
                                .lies()
                                .equals("d-card-r5c5"));
        }
    }

    private static List<String> lots() {
        return shop.books().where(Lot.class, "drawer", "d-card-r5c5").stream()
                .map(lot -> lot.count().written())
                .toList();
    }

    /** The keys of a row of the table, in order. */
    private static List<String> keys(String deed) throws IOException {
        return Files.readAllLines(Path.of("..", "DEVELOPERS.md")).stream()
                .map(ROW::matcher)
                .filter(Matcher::matches)
                .filter(row -> row.group(1).equals(deed))
                .map(row -> Arrays.stream(row.group(2).strip().split(" "))
                        .map(key -> key.replace("`", ""))
                        .toList())
                .findFirst()
                .orElseThrow(() -> new AssertionError("DEVELOPERS.md has no keys to " + deed));
    }

    private static void play(String key) {
        switch (key) {
            case "code" -> read("hornbook:d-card-r5c5");
            case "words" -> Fx.run(() -> box().setText("corvane disc 19"));
            case "/" -> type(KeyCode.SLASH);
            case "Enter" -> type(KeyCode.ENTER);
            default -> {
                boolean ctrl = key.startsWith("Ctrl+");
                String name = key.substring(ctrl ? 5 : 0);
                KeyCode code = name.equals("Enter") ? KeyCode.ENTER : KeyCode.getKeyCode(name);
                Fx.run(() -> {
                    Robot robot = new Robot();
                    if (ctrl) {
                        robot.keyPress(KeyCode.CONTROL);
                    }
                    robot.keyType(code);
                    if (ctrl) {
                        robot.keyRelease(KeyCode.CONTROL);
                    }
                });
            }
        }
        Fx.settle();
    }

    /** As a reader of codes does it: it types, and ends with Enter. */
    private static void read(String code) {
        Fx.run(() -> {
            for (char letter : code.toCharArray()) {
                send(KeyEvent.KEY_PRESSED, KeyCode.UNDEFINED, "");
                send(KeyEvent.KEY_TYPED, KeyCode.UNDEFINED, String.valueOf(letter));
            }
            send(KeyEvent.KEY_PRESSED, KeyCode.ENTER, "");
            send(KeyEvent.KEY_TYPED, KeyCode.UNDEFINED, "\r");
        });
        Fx.settle();
    }

    private static void send(javafx.event.EventType<KeyEvent> kind, KeyCode code, String letter) {
        Node focus = scene().getFocusOwner();
        Event.fireEvent(
                focus == null ? scene() : focus, new KeyEvent(kind, letter, letter, code, false, false, false, false));
    }

    private static void type(KeyCode code) {
        Fx.run(() -> new Robot().keyType(code));
        Fx.settle();
    }

    private static TextField box() {
        return (TextField) scene().lookup("#search");
    }

    private static Scene scene() {
        return window.stage().getScene();
    }
}
