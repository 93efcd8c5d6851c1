package hornbook.viewer.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.edit.Spot;
import hornbook.catalogue.entry.Kind;
import hornbook.viewer.card.Cards;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.widget.PictureView;
import hornbook.viewer.widget.Tile;
import hornbook.viewer.window.Fx;
import hornbook.viewer.window.HornbookWindow;
import hornbook.viewer.window.Shell;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The screen in the real window, on the demonstration shop. */
class KnowledgeScreenTest {
    @TempDir
    static Path folder;

    private static Workshop shop;
    private static KnowledgeModel model;
    private static HornbookWindow window;

    @BeforeAll
    static void open() {
        Fx.start();
        shop = DemoShop.in(folder.resolve("shop"));
        window = Fx.on(() -> {
            Cards cards = new Cards(shop.stock(), shop.furniture(), shop.jobs(), shop::catalogue);
            model = new KnowledgeModel(Work.atOnce(), shop::entryBook, cards);
            HornbookWindow made = new HornbookWindow("Hornbook", folder.resolve("look"));
            KnowledgeScreen screen = new KnowledgeScreen(model, drawer -> {}, card -> {});
            made.present(new Shell("The Warm Room", List.of(screen)));
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
    void aTraitIsShownWithTheDrawingsOfItsValues() {
        Fx.run(() -> {
            model.choose(Kind.TRAIT);
            model.open("tone-hole-rim");
        });
        Fx.settle();
        int values = shop.catalogue().traits().get("tone-hole-rim").values().size();
        assertThat(Fx.on(() -> root().lookupAll(".picture").stream()
                        .filter(PictureView.class::isInstance)
                        .count()))
                .isEqualTo(values + 1L);
        Fx.picture(scene(), "knowledge-trait");
        dressed("dark", "knowledge-trait-dark");
        dressed("contrast", "knowledge-trait-contrast");
        press(KeyCode.ESCAPE);
        assertThat(Fx.on(() -> model.view().open() == null)).isTrue();
    }

    @Test
    void aQuirkIsChangedByKeyboardAndItsDifferenceIsSeenBeforeItIsSaved() {
        Fx.run(() -> {
            model.choose(Kind.QUIRK);
            model.open("q-red-rot");
        });
        Fx.settle();
        Fx.picture(scene(), "knowledge-quirk");
        Fx.run(() -> button("edit-entry").fire());
        Fx.settle();
        Fx.run(() -> field("field-confirm").requestFocus());
        Fx.run(() -> field("field-confirm").selectAll());
        type("lamp");
        press(KeyCode.ESCAPE);
        assertThat(Fx.on(() -> model.view().edit().view().leaving())).isTrue();
        Fx.run(() -> field("field-confirm").setText("lamps"));
        Fx.run(() -> field("field-confirm").setText("lamp"));
        assertThat(Fx.on(() -> model.view().edit().view().leaving())).isFalse();
        assertThat(words()).contains("lamp", "Say where you know it from.", "Say how sure it is.");
        assertThat(Fx.on(() -> button("save-entry").isDisabled())).isTrue();
        Fx.run(() -> field("field-stage").requestFocus());
        Fx.run(() -> field("field-stage").setText("stage-inspekt"));
        assertThat(words()).anyMatch(w -> w.contains("perhaps stage-inspect is meant"));
        Fx.run(() -> field("field-stage").setText("stage-insp"));
        Fx.settle();
        press(KeyCode.DOWN);
        press(KeyCode.ENTER);
        assertThat(Fx.on(() -> field("field-stage").getText())).isEqualTo("stage-inspect");
        Fx.picture(scene(), "knowledge-edit");
        Fx.run(() -> toggle("origin-this-shop").fire());
        Fx.run(() -> field("origin-detail").setText("j-0237"));
        Fx.run(() -> field("origin-sureness").setText("sure"));
        Fx.settle();
        Fx.picture(scene(), "knowledge-told");
        dressed("dark", "knowledge-told-dark");
        dressed("contrast", "knowledge-told-contrast");
        assertThat(Fx.on(() -> button("save-entry").isDisabled())).isFalse();
        Fx.run(() -> button("save-entry").fire());
        Fx.settle();
        assertThat(shop.catalogue().quirks().get("q-red-rot").confirm()).isEqualTo("lamp");
        assertThat(words()).contains("The shop's own copy, over a shipped one");
        Fx.picture(scene(), "knowledge-saved");
    }

    @Test
    void linesComeAndGoInAModel() {
        String id = shop.catalogue().models().keySet().iterator().next();
        Fx.run(() -> {
            model.choose(Kind.MODEL);
            model.open(id);
            model.edit();
        });
        Fx.settle();
        EditModel edit = Fx.on(() -> model.view().edit());
        Fx.run(() -> button("add-serial_anchors").fire());
        Fx.settle();
        int last = Fx.on(() ->
                edit.view().draft().at(Spot.of("serial_anchors")).orElseThrow().size());
        assertThat(Fx.on(() -> field("field-serial_anchors." + last + ".serial").isFocused()))
                .isTrue();
        type("12");
        assertThat(Fx.on(() -> edit.view().draft().text(Spot.of("serial_anchors", "" + last, "serial"))))
                .isEqualTo("12");
        Fx.run(() -> tile("Open Form of the rims").fire());
        Fx.settle();
        Fx.picture(scene(), "knowledge-model");
        assertThat(words()).anyMatch(w -> w.contains("the shares add up") || w.contains("is missing"));
        Fx.run(() -> {
            model.back();
            model.back();
        });
    }

    /** A form can be made of every kind, with a field for whatever an entry of it says. */
    @Test
    void everyKindHasAForm() {
        for (Kind kind : Kind.values()) {
            Fx.run(() -> {
                model.choose(kind);
                model.open(model.view().lines().getFirst().id());
                model.edit();
            });
            Fx.settle();
            assertThat(Fx.on(() -> root().lookupAll(".field-row").size()))
                    .as(kind.word())
                    .isGreaterThan(1);
            Fx.run(model::back);
            Fx.run(model::create);
            Fx.settle();
            assertThat(Fx.on(() -> field("field-title"))).as(kind.word()).isNotNull();
            if (kind == Kind.SUPPLY) {
                Fx.picture(scene(), "knowledge-new");
            }
            Fx.run(model::back);
        }
    }

    /** Keeps a picture in other colours. */
    private static void dressed(String look, String name) {
        List<String> before = Fx.on(() -> List.copyOf(scene().getStylesheets()));
        List<String> now = before.stream()
                .map(sheet -> sheet.replaceAll("(light|dark|contrast)\\.css$", look + ".css"))
                .toList();
        Fx.run(() -> scene().getStylesheets().setAll(now));
        Fx.picture(scene(), name);
        Fx.run(() -> scene().getStylesheets().setAll(before));
    }

    private static Tile tile(String words) {
        return (Tile) root().lookupAll(".tile").stream()
                .filter(node -> String.valueOf(node.getAccessibleText()).contains(words))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> words() {
        Fx.settle();
        return Fx.on(() -> root().lookupAll(".label").stream()
                .filter(Node::isVisible)
                .map(label -> ((Label) label).getText())
                .toList());
    }

    private static void press(KeyCode key) {
        Fx.run(() -> new Robot().keyType(key));
        Fx.settle();
    }

    private static void type(String text) {
        for (char letter : text.toCharArray()) {
            Fx.run(() -> new Robot()
                    .keyType(KeyCode.getKeyCode(String.valueOf(letter).toUpperCase(java.util.Locale.ROOT))));
        }
        Fx.settle();
    }

    private static Button button(String id) {
        return (Button) root().lookup("#" + id);
    }

    private static ToggleButton toggle(String id) {
        return (ToggleButton) root().lookup("#" + id);
    }

    private static TextInputControl field(String id) {
        return (TextInputControl) root().lookupAll(".text-input").stream()
                .filter(node -> id.equals(node.getId()))
                .findFirst()
                .orElseThrow();
    }

    private static Node root() {
        return scene().getRoot();
    }

    private static Scene scene() {
        return window.stage().getScene();
    }
}
