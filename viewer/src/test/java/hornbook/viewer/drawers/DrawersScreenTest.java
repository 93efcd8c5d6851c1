package hornbook.viewer.drawers;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.window.Fx;
import hornbook.viewer.window.HornbookWindow;
import hornbook.viewer.window.Shell;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The screen in the real window, on the demonstration shop. */
class DrawersScreenTest {
    @TempDir
    static Path folder;

    private static Workshop shop;
    private static DrawersModel model;
    private static HornbookWindow window;

    @BeforeAll
    static void open() {
        Fx.start();
        shop = DemoShop.in(folder.resolve("shop"));
        window = Fx.on(() -> {
            OnDemo parts = OnDemo.of(shop);
            model = parts.drawers();
            HornbookWindow made = new HornbookWindow("Hornbook", folder.resolve("look"));
            made.present(new Shell("The Warm Room", List.of(parts.screen())));
            made.show();
            made.stage().setWidth(1280);
            made.stage().setHeight(800);
            return made;
        });
    }

    @AfterAll
    static void close() {
        Fx.run(() -> window.stage().hide());
        shop.close();
    }

    @Test
    void arrowKeysWalkAndEnterPullsTheDrawer() {
        choose("c-card");
        Fx.run(() -> scene().lookup("#d-card-r1c1").requestFocus());
        for (KeyCode key : List.of(KeyCode.RIGHT, KeyCode.DOWN, KeyCode.LEFT, KeyCode.ENTER)) {
            Fx.run(() -> new Robot().keyType(key));
            Fx.settle();
        }
        assertThat(Fx.on(() -> model.view().open())).isEqualTo("d-card-r2c1");
        Fx.picture(scene(), "drawers-card-open");
        Fx.run(() -> new Robot().keyType(KeyCode.ESCAPE));
        Fx.settle();
        assertThat(Fx.on(() -> model.view().open())).isNull();
    }

    @Test
    void everyFrontIsBigEnoughForAFingerAndSaysWhatItIs() {
        for (var plan : model.view().cabinets()) {
            choose(plan.id());
            assertThat(plan.drawers()).allSatisfy(front -> {
                Button button = (Button) scene().lookup("#" + front.id());
                assertThat(button.getHeight()).as(front.id()).isGreaterThanOrEqualTo(44);
                assertThat(button.getWidth()).as(front.id()).isGreaterThanOrEqualTo(44);
                assertThat(button.getAccessibleText()).contains("row " + front.row());
            });
            Fx.picture(scene(), "drawers-" + plan.id());
        }
    }

    @Test
    void litDrawersStandOut() {
        Fx.run(() -> model.light(Set.of("d-apoth-r4c8", "d-apoth-r1c5", "d-card-r5c5")));
        choose("c-apoth");
        assertThat(((Button) scene().lookup("#d-apoth-r4c8")).getAccessibleText())
                .contains("what you look for");
        Fx.run(() -> model.open("d-apoth-r4c8"));
        Fx.picture(scene(), "drawers-lit");
        Fx.run(() -> {
            model.close();
            model.light(Set.of());
        });
    }

    private static void choose(String cabinet) {
        Fx.run(() -> ((ToggleButton) scene().lookup("#tab-" + cabinet)).fire());
        Fx.settle();
    }

    private static Scene scene() {
        return window.stage().getScene();
    }
}
