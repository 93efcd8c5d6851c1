package hornbook.viewer;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.shop.PartUsed;
import hornbook.shared.shop.RunningClock;
import hornbook.shared.shop.TaskTime;
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
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The rows on clocks and usual parts of the table of keys in DEVELOPERS.md, played as they stand there, and counted. */
class ClockKeysTest {
    private static final Pattern ROW = Pattern.compile("\\| ([^|]+) \\| ((?:`[^`]+` ?)+)\\|.*");
    private static final int MOST_KEYS = 3;

    @TempDir
    Path folder;

    private Workshop shop;
    private HornbookWindow window;
    private Shell shell;

    @BeforeEach
    void open() {
        Fx.start();
        shop = DemoShop.in(folder.resolve("shop"));
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

    @AfterEach
    void close() {
        Fx.run(() -> window.stage().hide());
        shop.close();
    }

    @ParameterizedTest
    @EnumSource(
            value = ScreenName.class,
            names = {"FIND", "DRAWERS", "HORN_MAP", "JOBS"})
    void aClockStartsAndStopsWithThreeKeysFromAnyScreen(ScreenName from) throws IOException {
        go(from);
        played("start a clock");
        assertThat(shop.clocks().running()).hasSize(1);
        Fx.picture(scene(), "clock-runs-" + from.digit());
        RunningClock clock = shop.clocks().running().getFirst();
        int before = shop.books().where(TaskTime.class, "job", clock.job()).size();
        played("stop the clock");
        assertThat(shop.clocks().running()).isEmpty();
        assertThat(shop.books().where(TaskTime.class, "job", clock.job())).hasSize(before + 1);
    }

    @ParameterizedTest
    @EnumSource(
            value = ScreenName.class,
            names = {"FIND", "DRAWERS", "HORN_MAP"})
    void aUsualPartIsTakenForTheJobWhoseClockRuns(ScreenName from) throws IOException {
        Fx.run(() -> shop.clocks().start("j-0243", "task-teardown", 1, "N.O."));
        go(from);
        int before = shop.books().where(PartUsed.class, "job", "j-0243").size();
        played("take a part such jobs usually want");
        assertThat(shop.books().where(PartUsed.class, "job", "j-0243")).hasSize(before + 1);
        Fx.picture(scene(), "part-taken");
    }

    /** Asked, never invented: yesterday's clock is only written down with minutes a person named. */
    @Test
    void aForgottenClockAsksHowLongItReallyTook() {
        RunningClock forgotten = new RunningClock(
                "clock-0099",
                "j-0240",
                "task-pads-out",
                1,
                LocalDateTime.of(2026, 9, 29, 17, 0),
                shop.clocks().usual());
        Fx.run(() -> shop.books().write("yesterday", w -> w.put(forgotten)));
        Fx.settle();
        go(ScreenName.FIND);
        key("Ctrl+J");
        key("Enter");
        Label asks = (Label) scene().lookup(".clock-strip .ask-form .ask-title");
        assertThat(asks.getText()).contains("How long did it really take?");
        Fx.picture(scene(), "clock-forgotten");
        assertThat(shop.clocks().running()).hasSize(1);
        Fx.run(() -> ((TextField) scene().lookup(".clock-strip .ask-fields .text-field")).setText("a while"));
        key("Enter");
        assertThat(shop.clocks().running()).hasSize(1);
        Fx.run(() -> ((TextField) scene().lookup(".clock-strip .ask-fields .text-field")).setText("42"));
        key("Enter");
        assertThat(shop.clocks().running()).isEmpty();
        assertThat(shop.books().where(TaskTime.class, "job", "j-0240"))
                .extracting(TaskTime::minutes)
                .contains(42);
    }

    private void go(ScreenName from) {
        Fx.run(() -> {
            window.stage().requestFocus();
            shell.go(from);
        });
        Fx.settle();
    }

    private void played(String deed) throws IOException {
        List<String> keys = Files.readAllLines(Path.of("..", "DEVELOPERS.md")).stream()
                .map(ROW::matcher)
                .filter(Matcher::matches)
                .filter(row -> row.group(1).equals(deed))
                .map(row -> Arrays.stream(row.group(2).strip().split(" "))
                        .map(key -> key.replace("`", ""))
                        .toList())
                .findFirst()
                .orElseThrow(() -> new AssertionError("DEVELOPERS.md has no keys to " + deed));
        assertThat(keys).as(deed).hasSizeLessThanOrEqualTo(MOST_KEYS);
        keys.forEach(this::key);
    }

    private void key(String key) {
        int plus = key.indexOf('+');
        String held = plus > 0 ? key.substring(0, plus) : "";
        KeyCode code = key.equals("Enter") ? KeyCode.ENTER : KeyCode.getKeyCode(key.substring(plus + 1));
        Fx.run(() -> {
            Robot robot = new Robot();
            if (!held.isEmpty()) {
                robot.keyPress(held.equals("Alt") ? KeyCode.ALT : KeyCode.CONTROL);
            }
            robot.keyType(code);
            if (!held.isEmpty()) {
                robot.keyRelease(held.equals("Alt") ? KeyCode.ALT : KeyCode.CONTROL);
            }
        });
        Fx.settle();
    }

    private Scene scene() {
        return window.stage().getScene();
    }
}
