package hornbook.shared.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.shop.ShopUnavailable;
import java.nio.file.Path;
import java.sql.DriverManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LockTest {
    @TempDir
    Path folder;

    /** Opens the shop of its argument to write and says whether it could. */
    public static final class Asker {
        private Asker() {}

        public static void main(String[] arguments) {
            try (Books books = Books.open(Path.of(arguments[0]), Access.WRITE_IF_FREE)) {
                System.out.print(books.writable());
            }
        }
    }

    private String another() throws Exception {
        return new String(
                Child.start(Asker.class, folder.toString()).getInputStream().readAllBytes());
    }

    @Test
    void aRefusedSecondOpeningDoesNotFreeTheShop() throws Exception {
        try (Books books = SmallShop.in(folder)) {
            assertThatThrownBy(() -> Books.open(folder, Access.WRITE)).isInstanceOf(ShopUnavailable.class);
            assertThat(another()).isEqualTo("false");
            books.write("still the writer", w -> w.put(SmallShop.drawer(1, "MINE")));
        }
        assertThat(another()).isEqualTo("true");
    }

    @Test
    void aShopOfAnotherProgramOrANewerOneIsLeftAlone() throws Exception {
        SmallShop.in(folder).close();
        for (String[] spoil : new String[][] {
            {"pragma user_version = 99", "newer Hornbook"}, {"pragma application_id = 1", "no shop of Hornbook"}
        }) {
            try (var sql = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("shop.db"));
                    var statement = sql.createStatement()) {
                statement.execute(spoil[0]);
            }
            for (Access access : Access.values()) {
                assertThatThrownBy(() -> Books.open(folder, access))
                        .isInstanceOf(ShopUnavailable.class)
                        .hasMessageContaining(spoil[1]);
            }
            try (var sql = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("shop.db"));
                    var statement = sql.createStatement()) {
                statement.execute("pragma user_version = " + Migrations.SHAPE);
            }
        }
    }
}
