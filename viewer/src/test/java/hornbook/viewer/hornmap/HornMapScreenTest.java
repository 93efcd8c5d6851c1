package hornbook.viewer.hornmap;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.PadUsed;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.window.Fx;
import hornbook.viewer.window.HornbookWindow;
import hornbook.viewer.window.Shell;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The map in the real window, used with the keyboard, on a repad of the demonstration shop (its story 5). */
class HornMapScreenTest {
    @TempDir
    Path folder;

    private Workshop shop;
    private HornMapModel model;
    private HornbookWindow window;

    @BeforeEach
    void open() {
        Fx.start();
        shop = DemoShop.in(folder.resolve("shop"));
        model = new HornMapModel(
                Work.atOnce(),
                new HornsToMap(shop::catalogue, shop::hornMaps, shop.jobs(), shop.pads()),
                new Entering(
                        shop.jobBook(),
                        shop.mapBook(),
                        shop.pads(),
                        shop.sizes().reader()));
        window = Fx.on(() -> {
            HornbookWindow made = new HornbookWindow("Hornbook", folder.resolve("look"));
            made.present(new Shell("The Warm Room", List.of(new HornMapScreen(model))));
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

    private Scene scene() {
        return window.stage().getScene();
    }

    private void type(String text) {
        Fx.run(() -> ((TextField) scene().lookup("#cup-field")).setText(text));
        Fx.run(() -> new Robot().keyType(KeyCode.ENTER));
        Fx.settle();
    }

    @Test
    void padsGoInOneByOneAndOutOfTheirTray() {
        Fx.picture(scene(), "map-choice");
        Fx.run(() -> new Robot().keyType(KeyCode.DIGIT5));
        assertThat(model.view().map().horn())
                .as("its digit chooses the fifth of the bench")
                .isEqualTo("h-197");
        Fx.run(() -> model.choose("cup-f"));
        Fx.picture(scene(), "map-pads");
        assertThat(value("cup-f")).isEqualTo("\u2192 31");
        type("");
        assertThat(value("cup-f")).isEqualTo("31");
        assertThat(model.view().chosen()).isEqualTo("cup-e");
        PadUsed pad = shop.books().where(PadUsed.class, "job", "j-0240").getFirst();
        assertThat(pad.cup()).isEqualTo("cup-f");
        assertThat(shop.books().find(Lot.class, pad.lot()).orElseThrow().count().written())
                .as("one 31 mm was left")
                .isEqualTo("0");
        type("out of the box");
        assertThat(model.view().trouble()).contains("is no size");
        Fx.picture(scene(), "map-pads-after");
    }

    /** Story 5: 47 of 48 cups served, none for cup-d of the first (scenario, section 4, with the shop's data). */
    @Test
    void twoRepadsAreFittedFromOneTrayWithTheEnterKey() {
        int before = pads();
        for (String horn : List.of("h-197", "h-198")) {
            Fx.run(() -> model.show(horn));
            int cups = model.view().map().cups().size();
            Fx.run(() -> model.choose(model.view().map().cups().getFirst().cup()));
            for (int i = 0; i < cups; i++) {
                Fx.run(() -> model.enter(""));
            }
        }
        assertThat(shop.books().where(PadUsed.class, "job", "j-0240")).hasSize(23);
        assertThat(shop.books().where(PadUsed.class, "job", "j-0241")).hasSize(24);
        assertThat(pads()).isEqualTo(before - 47);
        Fx.run(() -> model.show("h-197"));
        Fx.picture(scene(), "map-story-5");
        assertThat(value("cup-d")).isEqualTo("none left");
    }

    private int pads() {
        return shop.books().all(Lot.class).stream()
                .filter(lot -> lot.title().toLowerCase(java.util.Locale.ROOT).contains("pad"))
                .map(lot -> lot.count().written())
                .filter(count -> count.matches("[0-9]+"))
                .mapToInt(Integer::parseInt)
                .sum();
    }

    @Test
    void openingsAreReadDownTheTubeAndAnOutlierIsAskedAbout() {
        Fx.run(() -> model.show("h-197"));
        Fx.run(() -> ((ToggleButton) scene().lookup("#layer-found")).fire());
        Fx.run(() -> model.choose("cup-f"));
        type("9,1");
        type("1/4 in");
        List<Finding> read = shop.books().where(Finding.class, "job", "j-0240").stream()
                .filter(f -> f.what().equals("finding-key-height"))
                .toList();
        assertThat(read).extracting(Finding::value).containsExactly("9.1", "6.35");
        assertThat(read).extracting(Finding::where).containsExactly("cup-f", "cup-e");
        Fx.run(() -> model.choose("cup-f"));
        Fx.settle();
        assertThat(scene().getRoot().lookupAll(".cup-panel .banner"))
                .anySatisfy(node -> assertThat(((Label) node).getText()).contains("outside the usual 6.2-7.6"));
        for (String look : List.of("light", "dark", "contrast")) {
            Fx.run(() -> ((Button) scene().lookup(".look")).fire());
            Fx.picture(scene(), "map-found-" + look);
        }
    }

    @Test
    void everyMemberOfTheFamilyFitsAndSaysItsCups() {
        for (String horn : List.of("h-194", "h-199")) {
            Fx.run(() -> model.show(horn));
            Fx.picture(scene(), "map-" + horn);
            assertThat(scene().getRoot().lookupAll(".cup-tile"))
                    .hasSizeGreaterThan(22)
                    .allSatisfy(tile -> {
                        assertThat(tile.getAccessibleText()).isNotBlank();
                        assertThat(tile.getBoundsInParent().getHeight()).isGreaterThanOrEqualTo(34);
                    });
        }
    }

    private String value(String cup) {
        return ((Label) scene().lookup("#tile-" + cup + " .cup-value")).getText();
    }
}
