package hornbook.viewer.welcome;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.shop.Lot;
import hornbook.shared.store.Books;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WelcomeModelTest {
    @TempDir
    Path folder;

    private final List<Workshop> opened = new ArrayList<>();
    private final List<Workshop> bringing = new ArrayList<>();

    @AfterEach
    void close() {
        opened.forEach(Workshop::close);
        bringing.forEach(Workshop::close);
    }

    @Test
    void anEmptyShopIsMadeWhereItIsToBe() {
        model().makeEmpty();
        assertThat(opened).hasSize(1);
        assertThat(Books.in(folder.resolve("shop"))).isTrue();
        assertThat(opened.getFirst().books().all(Lot.class)).isEmpty();
    }

    @Test
    void theDemoIsLaidOutApartFromAShopOfOnesOwn() {
        model().openDemo();
        assertThat(opened.getFirst().name()).isEqualTo("The Warm Room");
        assertThat(Books.in(folder.resolve("shop"))).isFalse();
    }

    @Test
    void bringingListsInBeginsWithAnEmptyShop() {
        model().bringIn();
        assertThat(opened).isEmpty();
        assertThat(bringing).hasSize(1);
        assertThat(bringing.getFirst().books().all(Lot.class)).isEmpty();
    }

    @Test
    void whereNoShopCanBeMadeThatIsSaidAndOneMayChooseAgain() throws Exception {
        Files.writeString(folder.resolve("shop"), "a file where the folder is to be");
        WelcomeModel model = model();
        model.makeEmpty();
        assertThat(model.view().trouble()).contains("shop");
        assertThat(model.view().doing()).isNull();
    }

    private WelcomeModel model() {
        return new WelcomeModel(
                Work.atOnce(), folder.resolve("shop"), folder.resolve("demo"), "", opened::add, bringing::add);
    }
}
