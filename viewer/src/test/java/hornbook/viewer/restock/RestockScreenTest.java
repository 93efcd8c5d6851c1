package hornbook.viewer.restock;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.supply.SuppliersModel;
import hornbook.viewer.window.Fx;
import hornbook.viewer.window.HornbookWindow;
import hornbook.viewer.window.Shell;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The screen in the real window, on the demonstration shop. */
class RestockScreenTest {
    @TempDir
    static Path folder;

    private static Workshop shop;
    private static RestockModel model;
    private static HornbookWindow window;
    private static final List<String> PULLED = new ArrayList<>();

    @BeforeAll
    static void open() {
        Fx.start();
        shop = DemoShop.in(folder.resolve("shop"));
        window = Fx.on(() -> {
            model = new RestockModel(Work.atOnce(), shop.restock(), shop::wanted, shop.orderBook(), shop.stockBook());
            SaveAs files = new SaveAs(
                    (name, ending) -> Optional.of(folder.resolve(name + "." + ending)),
                    shop.name(),
                    shop.books()::today);
            HornbookWindow made = new HornbookWindow("Hornbook", folder.resolve("look"));
            SuppliersModel suppliers =
                    new SuppliersModel(Work.atOnce(), shop.suppliers(), shop.supplierBook(), shop.orderBook());
            made.present(new Shell(
                    "The Warm Room", List.of(new RestockScreen(model, suppliers, PULLED::add, files, () -> {}))));
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
    void goodsComeInByKeyboardAndEscapePutsTheSheetAway() {
        Fx.picture(scene(), "restock");
        Fx.run(() -> scene().lookup("#came-o-0301").requestFocus());
        type(KeyCode.ENTER);
        assertThat(Fx.on(() -> ((TextField) scene().lookup("#goods-pieces")).getText()))
                .isEqualTo("12");
        Fx.picture(scene(), "restock-goods-in");
        type(KeyCode.ESCAPE);
        assertThat(Fx.on(() -> scene().lookup("#goods-pieces"))).isNull();
        Fx.run(() -> scene().lookup("#came-o-0301").requestFocus());
        type(KeyCode.ENTER);
        Fx.run(() -> ((TextField) scene().lookup("#goods-pieces")).setText("five"));
        type(KeyCode.ENTER);
        assertThat(Fx.on(() -> model.view().trouble())).contains("five");
        Fx.picture(scene(), "restock-goods-in-trouble");
        Fx.run(() -> ((TextField) scene().lookup("#goods-pieces")).setText("5"));
        type(KeyCode.ENTER);
        assertThat(Fx.on(() -> model.view().list().coming().getFirst().pieces()))
                .isEqualTo(7);
    }

    @Test
    void everyButtonIsBigEnoughForAFingerAndLeadsSomewhere() {
        Button look = Fx.on(() -> (Button) scene().lookup("#look-lot-0766"));
        assertThat(look.getHeight()).isGreaterThanOrEqualTo(44);
        assertThat(look.getAccessibleText()).contains("d-spool-r4c4");
        Fx.run(look::fire);
        assertThat(PULLED).contains("d-spool-r4c4");
        assertThat(Fx.on(() -> scene().lookup(".use-plot").getAccessibleText())).startsWith("Used a quarter");
    }

    @Test
    void theListIsSavedBothWays() {
        Fx.run(() -> ((Button) scene().lookup("#restock-csv")).fire());
        Fx.run(() -> ((Button) scene().lookup("#restock-pdf")).fire());
        assertThat(folder.resolve("order-2026-09-30.csv")).exists();
        assertThat(folder.resolve("order-2026-09-30.pdf"))
                .satisfies(pdf -> assertThat(Files.size(pdf)).isPositive());
        assertThat(Fx.on(() -> ((Labeled) scene().lookup(".restock .strip")).getText()))
                .startsWith("Written: ");
    }

    private static void type(KeyCode key) {
        Fx.run(() -> new Robot().keyType(key));
        Fx.settle();
    }

    private static Scene scene() {
        return window.stage().getScene();
    }

    @Test
    void aSupplierIsWrittenDownByKeyboardAndEscapeLeadsBackToTheList() {
        Fx.run(() -> scene().lookup("#restock-suppliers").requestFocus());
        type(KeyCode.ENTER);
        assertThat(Fx.on(() -> scene().lookup("#supplier-sup-v-marlbeck"))).isNotNull();
        Fx.picture(scene(), "suppliers");
        Fx.run(() -> scene().lookup("#supplier-new").requestFocus());
        type(KeyCode.ENTER);
        Fx.run(() -> ((TextField) scene().lookup("#ask-name")).setText("Harrowgate Felts"));
        Fx.run(() -> ((TextField) scene().lookup("#ask-days")).setText("soon"));
        type(KeyCode.ENTER);
        assertThat(shop.suppliers().card("harrowgate")).isEmpty();
        Fx.picture(scene(), "supplier-new");
        Fx.run(() -> ((TextField) scene().lookup("#ask-days")).setText("10"));
        type(KeyCode.ENTER);
        assertThat(shop.suppliers().card("harrowgate")).isPresent();
        Fx.run(() -> scene().lookup("#supplier-sup-v-harrowgate-felts").requestFocus());
        type(KeyCode.ENTER);
        Fx.picture(scene(), "supplier-open");
        type(KeyCode.ESCAPE);
        type(KeyCode.ESCAPE);
        assertThat(Fx.on(() -> scene().lookup("#restock-csv"))).isNotNull();
        assertThat(Fx.on(() -> scene().lookup("#supplier-new"))).isNull();
        shop.books().undoLast();
        assertThat(shop.suppliers().card("harrowgate")).isEmpty();
    }
}
