package hornbook.shared.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.shop.Kind;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.Supplier;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Out and in again changes no byte; a bad row is refused by name and the rest is taken. */
class RoundTripTest {
    private static final Path SMALL = Path.of("src/test/resources/small-shop");

    @TempDir
    Path folder;

    private final KnowledgeFiles none = new NoKnowledge();

    @Test
    void whatWasExportedComesBackByteForByte() throws Exception {
        try (Books books = Books.open(folder.resolve("shop"), Access.WRITE)) {
            ImportReport report = new Import(books, none).from(SMALL, false);
            assertThat(report.refused()).isEmpty();
            assertThat(report.taken()).isEqualTo(report.read()).isPositive();
            new Export(books, none).to(folder.resolve("out"));
        }
        for (Kind<?> kind : Kind.ALL) {
            Path given = SMALL.resolve(kind.file());
            if (Files.exists(given)) {
                assertThat(folder.resolve("out").resolve(kind.file())).hasSameBinaryContentAs(given);
            }
        }
        assertThat(folder.resolve("out/shop.json")).hasSameBinaryContentAs(SMALL.resolve("shop.json"));
    }

    @Test
    void aSecondImportOfTheSameChangesNothing() {
        try (Books books = Books.open(folder.resolve("shop"), Access.WRITE)) {
            new Import(books, none).from(SMALL, false);
            List<Lot> before = books.all(Lot.class);
            ImportReport again = new Import(books, none).from(SMALL, false);
            assertThat(again.taken()).isEqualTo(again.read());
            assertThat(books.all(Lot.class)).isEqualTo(before);
        }
    }

    @Test
    void aBadRowIsRefusedByFileRowAndField() throws Exception {
        Path bad = Files.createDirectory(folder.resolve("bad"));
        Files.writeString(bad.resolve("cabinets.csv"), "id,name,rows,columns,where,notes\nc-a,Oak chest,many,2,,\n");
        Files.writeString(
                bad.resolve("drawers.csv"),
                "id,cabinet,row,column,label_as_written,written_by,contents_as_found,label_state,last_looked_through,note\n"
                        + "d-1,c-a,1,1,KEYS,,,right,,\n");
        try (Books books = Books.open(folder.resolve("shop"), Access.WRITE)) {
            ImportReport report = new Import(books, none).from(bad, false);
            assertThat(report.refused())
                    .containsExactly(
                            new Refusal("cabinets.csv", 2, 2, "rows", "“many” is not a whole number"),
                            new Refusal(
                                    "drawers.csv",
                                    2,
                                    2,
                                    "cabinet",
                                    "“c-a” is no cabinet of this shop or of the import: add it or correct the number"));
            assertThat(report.taken()).isZero();
        }
    }

    /** What is out of use and still named by the ledger goes out too, and comes back out of use. */
    @Test
    void whatIsOutOfUseAndStillNamedComesBackOutOfUse() throws Exception {
        try (Books books = Books.open(folder.resolve("shop"), Access.WRITE)) {
            new Import(books, none).from(SMALL, false);
            Lot counted = books.all(Lot.class).stream()
                    .filter(lot -> !books.where(Movement.class, "lot", lot.id()).isEmpty())
                    .findFirst()
                    .orElseThrow();
            books.write("out of use", w -> {
                w.put(new Supplier("sup-v-old", "Old", "", "", "", "", ""));
                w.put(counted.boughtFrom("sup-v-old"));
            });
            books.write("gone", w -> {
                w.retire(Lot.class, counted.id());
                w.retire(Supplier.class, "sup-v-old");
            });
            new Export(books, none).to(folder.resolve("out"));
            try (Books other = Books.open(folder.resolve("other"), Access.WRITE)) {
                ImportReport report = new Import(other, none).from(folder.resolve("out"), false);
                assertThat(report.refused()).isEmpty();
                assertThat(other.find(Lot.class, counted.id())).isEmpty();
                assertThat(other.evenRetired(Lot.class, counted.id()))
                        .hasValueSatisfying(lot -> assertThat(lot.count()).isEqualTo(counted.count()));
                new Export(other, none).to(folder.resolve("again"));
                new Import(other, none).from(folder.resolve("out"), false);
                assertThat(other.find(Lot.class, counted.id())).isEmpty();
            }
        }
        for (String file : List.of("lots.csv", "suppliers.csv", "movements.csv", "out_of_use.csv")) {
            assertThat(folder.resolve("again").resolve(file))
                    .hasSameBinaryContentAs(folder.resolve("out").resolve(file));
        }
    }
}
