package hornbook.viewer.year;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.store.Books;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.window.Fx;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demonstration shop's years: the figures are the command's own record, drawn. */
class YearModelTest {
    @TempDir
    Path folder;

    private YearModel model(Workshop shop) {
        return new YearModel(
                Work.atOnce(),
                shop::year,
                progress -> shop.honesty().answer(),
                new YearFiles(shop.name(), shop::catalogue),
                (name, ending) -> Optional.of(folder.resolve(name + "." + ending)));
    }

    @Test
    void aYearIsShownDrawnAndWrittenDown() throws Exception {
        try (Workshop shop = DemoShop.in(folder.resolve("shop"))) {
            YearModel model = model(shop);
            model.ask();
            assertThat(model.view().books()).isEqualTo(shop.year().answer(2026));
            model.step(1);
            assertThat(model.view().books().year())
                    .as("there is no year after this one")
                    .isEqualTo(2026);
            model.step(-1);
            assertThat(model.view().books()).isEqualTo(shop.year().answer(2025));
            assertThat(model.view().running()).isFalse();
            model.csv();
            assertThat(Files.readString(folder.resolve("year-2025.csv"))).contains("came in");
            model.pdf();
            assertThat(model.view().said()).contains("year-2025.pdf").contains("page");
            assertThat(folder.resolve("year-2025.pdf")).isNotEmptyFile();
            Node pane = drawn(model, "year-2025");
            assertThat(pane.lookup("#year-jobs").getAccessibleText())
                    .contains("Jan "
                            + shop.year().answer(2025).months().getFirst().cameIn() + " and ");
        }
    }

    @Test
    void aShopWithNoHistorySaysSo() {
        Path bare = folder.resolve("bare");
        try (Workshop shop = Workshop.open(bare, hornbook.shared.store.Access.WRITE, Optional.empty())) {
            YearModel model = model(shop);
            model.ask();
            assertThat(model.view().books().empty()).isTrue();
            model.pdf();
            assertThat(model.view().said()).contains("nothing to write");
            Node pane = drawn(model, "year-bare");
            assertThat(((Label) pane.lookup(".said")).getText()).contains("say nothing of");
        }
        assertThat(Books.in(bare)).isTrue();
    }

    private static Node drawn(YearModel model, String name) {
        Fx.start();
        Stage stage = Fx.on(() -> {
            Stage made = new Stage();
            made.setScene(new Scene(new YearPane(model, () -> {}), 900, 700));
            made.show();
            return made;
        });
        Fx.settle();
        Fx.picture(stage.getScene(), name);
        Fx.run(stage::hide);
        return stage.getScene().getRoot();
    }
}
