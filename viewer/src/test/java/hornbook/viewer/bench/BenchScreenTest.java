package hornbook.viewer.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.widget.PictureView;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.window.Fx;
import hornbook.viewer.window.HornbookWindow;
import hornbook.viewer.window.Shell;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bench in the real window, on the demonstration shop; stories 1 and 2 of the project's trade notes. */
class BenchScreenTest {
    @TempDir
    static Path folder;

    private static Workshop shop;
    private static BenchModel model;
    private static HornbookWindow window;
    private static final List<String> pulled = new ArrayList<>();
    private static final List<String> opened = new ArrayList<>();

    @BeforeAll
    static void open() {
        Fx.start();
        shop = DemoShop.in(folder.resolve("shop"));
        model = OnTheBench.model(shop, Work.atOnce());
        window = Fx.on(() -> {
            HornbookWindow made = new HornbookWindow("Hornbook", folder.resolve("look"));
            BenchScreen screen = new BenchScreen(
                    model,
                    OnTheBench.wrong(shop),
                    pulled::add,
                    opened::add,
                    () -> Optional.of(folder.resolve("brief.pdf")));
            made.present(new Shell("The Warm Room", List.of(screen)));
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
    void clear() {
        Fx.run(() -> {
            model.anew();
            model.plain(false);
        });
        Fx.settle();
    }

    @Test
    void storyOneByCardsAndFields() {
        Fx.run(() -> ((ToggleButton) node("learned")).fire());
        press("value-alto");
        Fx.picture(scene(), "bench-alto");
        choose("bell-brace", "three-point");
        choose("octave-mechanism", "auto-slide");
        choose("tone-hole-make", "soldered-on");
        assertThat(shownFirst()).isEqualTo("Halverick Drumlin, alto");
        assertThat(first()).isCloseTo(0.924, within(0.02));
        write("serial", "3660?8");
        write("mark", "Merrivane");
        assertThat(first()).isGreaterThan(0.97);
        assertThat(text(".says")).startsWith("Halverick Drumlin, alto, ");
        assertThat(text(".brief .stop")).startsWith("STOP: ");
        Fx.picture(scene(), "bench-story-one");
        press("candidate-m-halverick-drumlin-alto");
        Fx.picture(scene(), "bench-story-one-why");
        assertThat(node("it-is-this")).isNotNull();
        Fx.run(() -> ((Button) node("it-is-this")).fire());
        Fx.picture(scene(), "bench-story-one-confirm");
        Fx.run(() -> model.back());
    }

    @Test
    void theCupsHaveTheKeyboardAndEscapeLeadsBackToTheCards() {
        press("value-alto");
        keys(KeyCode.C);
        Fx.settle();
        Fx.picture(scene(), "bench-cups");
        assertThat(focus().getId()).isEqualTo("cups-pads");
        keys(KeyCode.ESCAPE);
        assertThat(focus().getId()).startsWith("value-");
    }

    private static Node focus() {
        return Fx.on(() -> scene().getFocusOwner());
    }

    @Test
    void storyTwoNamesTheSpannersDrawerAndPullsIt() {
        Fx.run(() -> model.lay("job", "j-0237"));
        Fx.settle();
        Fx.picture(scene(), "bench-story-two");
        Fx.run(() -> ((ToggleButton) node("brief-fetch")).fire());
        Fx.settle();
        Tile spanner = (Tile) node("fetch-tool-pin-spanner");
        assertThat(((Label) spanner.lookup(".label-plate")).getText()).isEqualTo("bumper holders");
        Fx.run(spanner::fire);
        assertThat(pulled).contains("d-card-r3c6");
        Fx.picture(scene(), "bench-story-two-fetch");
        Fx.run(() -> ((ToggleButton) node("brief-before")).fire());
        Fx.settle();
        press("past-j-0164");
        assertThat(opened).contains("j-0164");
        Fx.run(() -> ((Button) node("print-brief")).fire());
        assertThat(folder.resolve("brief.pdf")).isNotEmptyFile();
        Fx.run(() -> ((ToggleButton) node("brief-bites")).fire());
    }

    @Test
    void theKeyboardAloneAnswersSkipsAndTakesBack() {
        Fx.run(() -> node("value-alto").requestFocus());
        keys(KeyCode.DIGIT3);
        assertThat(Fx.on(() -> model.view().horn().traits())).containsExactly("family-member");
        keys(KeyCode.DIGIT0);
        assertThat(Fx.on(() -> model.view().horn().looks().getLast().value())).isEqualTo("unknown");
        String asked = Fx.on(() -> model.view().asking().trait().id());
        keys(KeyCode.S);
        assertThat(Fx.on(() -> model.view().asking().trait().id())).isNotEqualTo(asked);
        InHand before = Fx.on(() -> model.view().horn());
        keys(KeyCode.H, KeyCode.O, KeyCode.R, KeyCode.N, KeyCode.B, KeyCode.O, KeyCode.O, KeyCode.K); // a label's code
        assertThat(Fx.on(() -> model.view().horn())).isEqualTo(before);
        keys(KeyCode.BACK_SPACE, KeyCode.BACK_SPACE);
        assertThat(Fx.on(() -> model.view().horn().looks())).isEmpty();
    }

    @Test
    void everyCardHasItsDrawingIsBigEnoughAndSaysWhatIsToBeSeen() {
        for (String trait : List.of("family-member", "resonator-type", "bell-brace", "pearl-form")) {
            Fx.run(() -> model.choose(trait));
            Fx.picture(scene(), "bench-cards-" + trait);
            List<Node> cards = List.copyOf(scene().getRoot().lookupAll(".value-card"));
            assertThat(cards).hasSizeGreaterThan(5).allSatisfy(card -> {
                PictureView picture = (PictureView) card.lookup(".picture");
                assertThat(picture.getHeight()).isGreaterThan(120);
                assertThat(picture.getAccessibleText()).isNotBlank();
                assertThat(card.getAccessibleText()).contains(picture.getAccessibleText());
                assertThat(card.lookupAll(".label"))
                        .allSatisfy(l -> assertThat(((Label) l).getHeight() + 0.5)
                                .as(((Label) l).getText())
                                .isGreaterThanOrEqualTo(((Label) l).prefHeight(((Label) l).getWidth())));
            });
        }
    }

    @Test
    void nothingIsCutOff() {
        for (int wide : List.of(1280, 900)) {
            Fx.picture(scene(), "bench-cut-" + wide, wide, wide == 900 ? 600 : 800);
            assertThat(scene().getRoot().lookupAll(".look-tab")).hasSize(4).allSatisfy(tab -> {
                Node words = tab.lookup(".tab-words");
                assertThat(words.getBoundsInParent().getMinY()).isGreaterThanOrEqualTo(0);
                assertThat(words.getBoundsInParent().getMaxY())
                        .as(((Label) words).getText())
                        .isLessThanOrEqualTo(tab.getLayoutBounds().getHeight());
            });
        }
        Fx.picture(scene(), "bench-usual");
        Node last = scene().lookup("#anew");
        assertThat(last.localToScene(last.getBoundsInLocal()).getMaxY())
                .as("the strip is one line high")
                .isLessThan(150);
    }

    @Test
    void itCanBeReadInEveryLook() {
        Fx.run(() -> model.lay("horn", "h-192"));
        for (String look : List.of("light", "dark", "contrast")) {
            Fx.run(() -> ((Button) scene().lookup(".look")).fire());
            Fx.picture(scene(), "bench-" + look);
        }
        Fx.run(() -> ((Button) scene().lookup(".look")).fire());
        Fx.run(() -> model.side(new BenchView.Side.Choose()));
        Fx.picture(scene(), "bench-choose");
        Fx.run(() -> model.side(new BenchView.Side.Entry()));
        Fx.picture(scene(), "bench-entry");
        Fx.run(() -> ((Button) node("horns-here")).fire());
        Fx.picture(scene(), "bench-here");
        Fx.run(() -> model.back());
        Fx.picture(scene(), "bench-small", 900, 600);
        Node column = scene().lookup(".middle-column");
        assertThat(column.localToScene(column.getBoundsInLocal()).getMaxX()).isLessThanOrEqualTo(900);
        Fx.picture(scene(), "bench-usual");
    }

    private static void choose(String trait, String value) {
        Fx.run(() -> model.choose(trait));
        Fx.settle();
        press("value-" + value);
    }

    /** The complaint of the job is asked about at once; digits answer it and not the look that was there before. */
    @Test
    void whatIsWrongStandsBesideTheHorn() {
        Fx.run(() -> model.lay("job", "j-0242"));
        Fx.settle();
        int looks = model.view().horn().looks().size();
        press("wrong");
        assertThat(Fx.on(() -> ((javafx.scene.control.TextField) node("symptom")).getText()))
                .isEqualTo("guard rattles, screw will not go in");
        Fx.picture(scene(), "bench-wrong");
        keys(KeyCode.DIGIT2);
        assertThat(model.view().horn().looks()).hasSize(looks);
        assertThat(text(".diagnose .heading")).isEqualTo("Check now");
        Fx.picture(scene(), "bench-wrong-no");
        keys(KeyCode.ESCAPE);
        assertThat(node("symptom")).isNull();
    }

    private static void press(String id) {
        Fx.run(() -> ((Tile) node(id)).fire());
        Fx.settle();
    }

    private static void write(String id, String text) {
        Fx.run(() -> {
            node(id).requestFocus();
            ((javafx.scene.control.TextField) node(id)).setText(text);
        });
        keys(KeyCode.ENTER);
    }

    private static void keys(KeyCode... keys) {
        for (KeyCode key : keys) {
            Fx.run(() -> new Robot().keyType(key));
            Fx.settle();
        }
    }

    private static double first() {
        return Fx.on(
                () -> model.view().weighed().answer().candidates().getFirst().probability());
    }

    private static String shownFirst() {
        return text(".candidate .candidate-title");
    }

    private static String text(String selector) {
        return Fx.on(() -> ((Label) scene().lookup(selector)).getText());
    }

    private static Node node(String id) {
        return scene().lookup("#" + id);
    }

    private static Scene scene() {
        return window.stage().getScene();
    }
}
