package hornbook.viewer.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.indexer.search.Hit;
import hornbook.indexer.search.Question;
import hornbook.shared.exchange.ImportReport;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Access;
import hornbook.viewer.workshop.Workshop;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo goes in whole, comes out byte for byte, and answers from its own data. */
class DemoShopTest {
    @TempDir
    static Path folder;

    private static Workshop demo;

    @BeforeAll
    static void make() {
        demo = DemoShop.in(folder.resolve("demo"));
    }

    @AfterAll
    static void close() {
        demo.close();
    }

    private static byte[] given(String name) throws Exception {
        try (InputStream in = DemoShop.class.getResourceAsStream(name)) {
            return in.readAllBytes();
        }
    }

    private static List<String> names() throws Exception {
        return new String(given("files.txt"), "UTF-8").lines().toList();
    }

    @Test
    void whatWentInComesOutByteForByteAndGoesInAgain() throws Exception {
        Path out = folder.resolve("out");
        demo.exporting().to(out);
        for (String name : names()) {
            assertThat(out.resolve(name)).as(name).hasBinaryContent(given(name));
        }
        try (Workshop other = Workshop.open(folder.resolve("other"), Access.WRITE, Optional.empty())) {
            ImportReport report = other.importing().from(out, false);
            assertThat(report.refused()).isEmpty();
            other.exporting().to(folder.resolve("again"));
        }
        for (String name : names()) {
            assertThat(folder.resolve("again").resolve(name)).as(name).hasSameBinaryContentAs(out.resolve(name));
        }
        try (Stream<Path> files = Files.list(out)) {
            assertThat(files.count()).isEqualTo(names().size());
        }
    }

    /** Right answers: the demo's own stories of discs in the wrong drawer, the spanner that turns two things. */
    @ParameterizedTest
    @CsvSource({"corvane disc 19, lot-0262, d-card-r5c5", "two-pin spanner, tool-pin-spanner, d-card-r3c6"})
    void theRightThingStandsOnTopWithItsDrawer(String typed, String id, String drawer) {
        Hit top = demo.search().find(Question.of(typed)).hits().getFirst();
        assertThat(top.id()).isEqualTo(id);
        assertThat(top.drawer()).isEqualTo(drawer);
    }

    @Test
    void itIsOpenedAgainAndNothingElseIsTakenForIt() throws Exception {
        Path other = Files.createDirectory(folder.resolve("letters"));
        Files.writeString(other.resolve("letter.txt"), "not a shop");
        assertThatThrownBy(() -> DemoShop.in(other))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("--at");
        try (Workshop again = DemoShop.in(folder.resolve("demo"))) {
            assertThat(again.books().deeds(9)).hasSize(1);
        }
    }
}
