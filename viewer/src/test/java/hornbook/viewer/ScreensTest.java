package hornbook.viewer;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.welcome.WelcomeModel;
import hornbook.viewer.welcome.WelcomePane;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.window.Fx;
import hornbook.viewer.window.HornbookWindow;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All screens in the real window on the demonstration shop, used with the keyboard alone. */
class ScreensTest {
    @TempDir
    static Path folder;

    private static Workshop shop;
    private static HornbookWindow window;

    @BeforeAll
    static void open() {
        Fx.start();
        shop = DemoShop.in(folder.resolve("shop"));
        window = Fx.on(() -> {
            HornbookWindow made = new HornbookWindow("Hornbook", folder.resolve("look"));
            made.present(new Screens(shop, Work.atOnce()).shell());
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
    void empty() {
        keys(KeyCode.ESCAPE, KeyCode.ESCAPE, KeyCode.ESCAPE, KeyCode.ESCAPE);
        Fx.run(() -> box().clear());
    }

    @Test
    void whatIsTypedIsFoundAndItsDrawerIsShownBigAndLitInItsCabinet() {
        type("corvane disc 19");
        Node plate = scene().lookup("#hit-lot-0262 .label-plate");
        assertThat(((javafx.scene.control.Label) plate).getText()).isEqualTo("buttons, misc.");
        Fx.picture(scene(), "find-disc");
        Fx.run(() -> ((Tile) scene().lookup("#hit-lot-0262")).fire());
        Fx.picture(scene(), "find-disc-open");
        Fx.run(() -> ((Button) scene().lookup("#show-it")).fire());
        Fx.settle();
        Button drawer = (Button) scene().lookup("#d-card-r5c5");
        assertThat(drawer.getAccessibleText()).contains("what you look for");
        Fx.picture(scene(), "find-disc-drawer");
    }

    @Test
    void theKeyboardAloneOpensAndPutsAway() {
        type("two-pin spanner");
        keys(KeyCode.DOWN, KeyCode.UP, KeyCode.ENTER);
        assertThat(scene().lookup(".card-pane")).isNotNull();
        Fx.picture(scene(), "find-spanner");
        keys(KeyCode.ESCAPE);
        assertThat(scene().lookup(".card-pane")).isNull();
    }

    @Test
    void everyHitSaysInWordsWhatItShows() {
        type("halverick");
        List<Node> hits = List.copyOf(scene().getRoot().lookupAll(".hit"));
        assertThat(hits).hasSizeGreaterThan(5).allSatisfy(hit -> {
            assertThat(hit.getAccessibleText()).isNotBlank();
            assertThat(hit.getBoundsInLocal().getHeight()).isGreaterThanOrEqualTo(44);
        });
        Fx.picture(scene(), "find-make");
    }

    @Test
    void itCanBeReadInEveryLookAndSize() {
        type("snap reso 19");
        keys(KeyCode.ENTER);
        for (String look : List.of("light", "dark", "contrast")) {
            Fx.run(() -> ((Button) scene().lookup(".look")).fire());
            Fx.picture(scene(), "find-" + look);
        }
        Fx.run(() -> ((Button) scene().lookup(".look")).fire());
        Fx.picture(scene(), "find-small", 900, 600);
        assertThat(scene().lookup(".card-pane").getBoundsInParent().getMaxX()).isLessThanOrEqualTo(900);
        Fx.picture(scene(), "find-usual");
    }

    @Test
    void aHornThatWasFoundIsLaidOnTheBench() {
        type("h-194");
        Fx.run(() -> ((Tile) scene().lookup("#hit-h-194")).fire());
        Fx.settle();
        Fx.run(() -> ((Button) scene().lookup("#to-bench")).fire());
        Fx.settle();
        assertThat(((javafx.scene.control.Label) scene().lookup(".horn-title")).getText())
                .isEqualTo("Chantreval Halyard, tenor");
        Fx.picture(scene(), "bench-from-find");
    }

    @Test
    void whatCannotBeFoundIsSaid() {
        type("zzyzx");
        Fx.picture(scene(), "find-nothing");
        assertThat(((javafx.scene.control.Label) scene().lookup(".said")).getText())
                .startsWith("Nothing found");
    }

    @Test
    void theFirstStartOffersThreeThings() {
        HornbookWindow first = Fx.on(() -> {
            HornbookWindow made = new HornbookWindow("Hornbook", folder.resolve("look"));
            WelcomeModel model = new WelcomeModel(
                    Work.atOnce(), folder.resolve("own"), folder.resolve("demo"), "", workshop -> {}, workshop -> {});
            made.put(new WelcomePane(model));
            made.show();
            return made;
        });
        Fx.picture(first.stage().getScene(), "welcome");
        assertThat(first.stage().getScene().getRoot().lookupAll(".choice")).hasSize(3);
        Fx.run(() -> first.stage().hide());
    }

    private static void type(String text) {
        Fx.run(() -> {
            window.stage().requestFocus();
            box().requestFocus();
            box().setText(text);
        });
        Fx.settle();
    }

    private static void keys(KeyCode... keys) {
        for (KeyCode key : keys) {
            Fx.run(() -> new Robot().keyType(key));
            Fx.settle();
        }
    }

    private static TextField box() {
        return (TextField) scene().lookup("#search");
    }

    private static Scene scene() {
        return window.stage().getScene();
    }
}
