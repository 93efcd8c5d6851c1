package hornbook.viewer.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.window.Fx;
import hornbook.viewer.window.HornbookWindow;
import hornbook.viewer.window.Screen;
import hornbook.viewer.window.ScreenName;
import hornbook.viewer.window.Shell;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pane in the real window, played with the keyboard. */
class DiagnosePaneTest {
    @TempDir
    static Path folder;

    private static Workshop shop;
    private static DiagnoseModel model;
    private static HornbookWindow window;
    private static final List<String> PULLED = new ArrayList<>();

    /** The pane alone in the place of the bench. */
    private record Alone(DiagnosePane pane) implements Screen {
        @Override
        public ScreenName name() {
            return ScreenName.BENCH;
        }

        @Override
        public Node node() {
            return pane;
        }

        @Override
        public void shown() {
            pane.focus();
        }

        @Override
        public void changed(Set<String> kinds) {}

        @Override
        public boolean back() {
            return false;
        }
    }

    @BeforeAll
    static void open() {
        Fx.start();
        shop = DemoShop.in(folder.resolve("shop"));
        window = Fx.on(() -> {
            model = new DiagnoseModel(Work.atOnce(), new DiagnoseAsked(shop), (job, tasks) -> {});
            HornbookWindow made = new HornbookWindow("Hornbook", folder.resolve("look"));
            made.present(
                    new Shell("The Warm Room", List.of(new Alone(new DiagnosePane(model, PULLED::add, () -> {})))));
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

    @Test
    void aFaultIsFoundByKeyboardAlone() {
        Fx.run(() -> model.about(new Complaint("", null, "alto", "j-0237")));
        Fx.run(() -> ((TextField) scene().lookup("#symptom")).requestFocus());
        Fx.run(() -> ((TextField) scene().lookup("#symptom")).setText("low notes burble"));
        type(KeyCode.ENTER);
        Fx.picture(scene(), "diagnose-asked");
        assertThat(Fx.<String>on(() -> scene().getFocusOwner().getId())).isEqualTo("reply-yes");
        type(KeyCode.DIGIT2);
        assertThat(model.view().checks()).hasSize(1);
        type(KeyCode.BACK_SPACE);
        assertThat(model.view().checks()).isEmpty();
        type(KeyCode.DIGIT0);
        assertThat(model.view().passed()).hasSize(1);
        Fx.picture(scene(), "diagnose-passed");
        type(KeyCode.BACK_SPACE);
        type(KeyCode.DIGIT1);
        assertThat(Fx.on(() -> scene().lookup("#plan-cure"))).isNotNull();
        Fx.picture(scene(), "diagnose-cure");
        Fx.run(() -> model.ask("smells of fish"));
        Fx.settle();
        Fx.picture(scene(), "diagnose-strange");
        assertThat(Fx.on(() -> scene().getRoot().lookupAll(".meant").size())).isEqualTo(3);
    }

    @Test
    void answersAreBigEnoughForAFingerAndToolsShowTheirDrawer() {
        Fx.run(() -> model.about(new Complaint("", null, "alto", null)));
        Fx.run(() -> model.ask("f-b-c-airy"));
        Fx.settle();
        assertThat(Fx.on(() -> ((Region) scene().lookup("#reply-no")).getHeight()))
                .isGreaterThanOrEqualTo(44);
        Fx.run(() -> ((hornbook.viewer.widget.Tile) scene().lookup(".tool-place")).fire());
        assertThat(PULLED)
                .containsExactly(
                        shop.tools().tool("tool-leak-light").orElseThrow().lies());
        Fx.picture(scene(), "diagnose-tool");
    }

    private static void type(KeyCode key) {
        Fx.run(() -> new Robot().keyType(key));
        Fx.settle();
    }

    private static Scene scene() {
        return window.stage().getScene();
    }
}
