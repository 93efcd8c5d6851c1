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

    @AfterEach
    void close() {
        opened.forEach(Workshop::close);
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
    void anImportOpensTheShopItFilled() throws Exception {
        write("cabinets.csv", "id,name,rows,columns,where,notes\nc-a,A,1,1,here,\n");
        model().importFrom(folder.resolve("files"));
        assertThat(opened).hasSize(1);
    }

    @Test
    void rowsThatWereRefusedAreNamedBeforeTheShopOpens() throws Exception {
        write("cabinets.csv", "id,name,rows,columns,where,notes\nc-a,A,1,1,here,\nc-b,B,many,1,here,\n");
        WelcomeModel model = model();
        model.importFrom(folder.resolve("files"));
        assertThat(opened).isEmpty();
        assertThat(model.view().trouble()).contains("1 of 2 rows taken").contains("cabinets.csv, row 3, rows");
        model.view().goOn().run();
        assertThat(opened).hasSize(1);
    }

    @Test
    void aFolderWithoutSuchFilesIsRefusedAndOneMayChooseAgain() throws Exception {
        Files.createDirectories(folder.resolve("files"));
        WelcomeModel model = model();
        model.importFrom(folder.resolve("files"));
        assertThat(model.view().trouble()).contains("holds no file of the exchange format");
        assertThat(model.view().doing()).isNull();
        model.makeEmpty();
        assertThat(opened).hasSize(1);
    }

    private void write(String file, String text) throws Exception {
        Files.createDirectories(folder.resolve("files"));
        Files.writeString(folder.resolve("files").resolve(file), text);
    }

    private WelcomeModel model() {
        return new WelcomeModel(Work.atOnce(), folder.resolve("shop"), folder.resolve("demo"), "", opened::add);
    }
}
