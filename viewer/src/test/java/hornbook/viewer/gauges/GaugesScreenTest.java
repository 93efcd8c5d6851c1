package hornbook.viewer.gauges;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.gauge.GaugeQuestion;
import hornbook.shared.gauge.SizeForms;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.window.Fx;
import hornbook.viewer.window.HornbookWindow;
import hornbook.viewer.window.Shell;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The screen in the real window, on the demonstration shop. */
class GaugesScreenTest {
    @TempDir
    static Path folder;

    private static final List<String> PULLED = new ArrayList<>();
    private static Workshop shop;
    private static FitModel fit;
    private static ThreadModel thread;
    private static PadsModel pads;
    private static HornbookWindow window;

    @BeforeAll
    static void open() {
        Fx.start();
        shop = DemoShop.in(folder.resolve("shop"));
        window = Fx.on(() -> {
            Work work = Work.atOnce();
            SizeModel size = new SizeModel(work, t -> new SizeForms(shop.sizes()).answer(GaugeQuestion.of(t)));
            thread = new ThreadModel(work, () -> new Threads(shop.sizes()));
            pads = new PadsModel(work, reserve -> shop.pads().forJobs(List.of(), reserve));
            fit = new FitModel(
                    work,
                    shop.fit()::answer,
                    new PieceKinds(shop::catalogue)::all,
                    new FitFrom(shop.stock(), shop.jobs(), shop::catalogue));
            SpringModel springs = new SpringModel(work, shop.springs()::answer, shop.sizes()::reader);
            HornbookWindow made = new HornbookWindow("Hornbook", folder.resolve("look"));
            made.present(new Shell(
                    "The Warm Room", List.of(new GaugesScreen(fit, size, thread, pads, springs, PULLED::add))));
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
    void aSizeIsAnsweredWhileItIsTyped() {
        tab("size");
        type(".108");
        assertThat(words()).anyMatch(w -> w.contains(".108"));
        Fx.picture(scene(), "gauges-size");
    }

    @Test
    void aThreadIsToldFromTurnsAndDrawn() {
        tab("thread");
        type("2.95");
        Fx.run(() -> scene().lookup("#ask-turns").requestFocus());
        type("5");
        Fx.run(() -> scene().lookup("#ask-over").requestFocus());
        type("3.0");
        assertThat(Fx.on(() -> thread.view().answer().threads().getFirst().designation()))
                .isEqualTo("M3x0.6");
        assertThat(scene().getRoot().lookupAll(".profile")).hasSize(2);
        Fx.picture(scene(), "gauges-thread");
    }

    /** Story 4 of the demonstration: the rod that is cut, never the pattern that fits exactly. */
    @Test
    void aRodIsMadeToFit() {
        tab("fit");
        Fx.run(() -> fit.change(a -> a.with(FitAsked.Field.KIND, "hinge ro")
                .with(FitAsked.Field.DIAMETER, "2.38")
                .with(FitAsked.Field.LENGTH, "118")
                .with(FitAsked.Field.THREAD, "2-56")
                .with(FitAsked.Field.MODEL, "m-brindlow-ferryman-tenor")));
        Fx.settle();
        Fx.run(() -> ((javafx.scene.control.Button) scene().lookup(".offered .button")).fire());
        Fx.settle();
        assertThat(Fx.on(() -> fit.view().answer().plans().getFirst().lot())).isEqualTo("lot-0815");
        assertThat(scene().getRoot().lookupAll(".piece")).hasSize(1);
        assertThat(words()).anyMatch(w -> w.contains("keepsake"));
        Fx.picture(scene(), "gauges-fit");
    }

    /** Stiffness goes with the fourth power of the wire: 1.05 for 1.00 is 21.6 % stiffer (Machinery's Handbook). */
    @Test
    void anotherWireSaysWhatItDoes() {
        tab("springs");
        type("1.00");
        Fx.run(() -> scene().lookup("#ask-free").requestFocus());
        type("45");
        Fx.run(() -> scene().lookup("#ask-to-wire").requestFocus());
        type("1.05");
        assertThat(words()).contains("The change makes it 21.6 % stiffer.");
        Fx.picture(scene(), "gauges-springs");
    }

    /** Story 5 of the demonstration: 47 of 48 cups, 33.5 mm short. */
    @Test
    void theTrayShowsWhatIsShort() {
        tab("pads");
        assertThat(words()).anyMatch(w -> w.startsWith("47 of 48 cups served"));
        assertThat(scene().getRoot().lookupAll(".dot.short")).hasSize(1);
        Fx.picture(scene(), "gauges-pads");
        Fx.run(() -> ((hornbook.viewer.widget.Tile) scene().lookup(".pad-row")).fire());
        assertThat(PULLED).isNotEmpty();
    }

    private static List<String> words() {
        return Fx.on(() -> scene().getRoot().lookupAll(".label").stream()
                .filter(Node::isVisible)
                .map(label -> ((javafx.scene.control.Label) label).getText())
                .toList());
    }

    private static void tab(String name) {
        Fx.run(() -> ((ToggleButton) scene().lookup("#gauge-" + name)).fire());
        Fx.settle();
    }

    private static void type(String text) {
        for (char letter : text.toCharArray()) {
            KeyCode key = letter == '.' ? KeyCode.PERIOD : KeyCode.getKeyCode(String.valueOf(letter));
            Fx.run(() -> new Robot().keyType(key));
        }
        Fx.settle();
    }

    private static Scene scene() {
        return window.stage().getScene();
    }
}
