package hornbook.catalogue.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.pack.Difference.What;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Contact;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PacksTest {
    private static final String MAKE = """
            {"id": "k-%s", "title": "%s", "source": "this shop, j-0007", "sureness": "good"}
            """;

    @TempDir
    Path folder;

    private Books ours;
    private Books theirs;

    @BeforeEach
    void twoShops() {
        ours = Books.open(folder.resolve("ours"), Access.WRITE);
        theirs = Books.open(folder.resolve("theirs"), Access.WRITE);
    }

    @AfterEach
    void close() {
        ours.close();
        theirs.close();
    }

    private static void know(Books books, String id, String title) {
        books.write("know " + id, w -> w.entry("make/k-" + id + ".json", MAKE.formatted(id, title)));
    }

    private static Packs packs(Books books) {
        return new Packs(books, catalogue(books));
    }

    private static Catalogue catalogue(Books books) {
        return Catalogue.open(books.folder().resolve("entries"));
    }

    private Path pack() {
        Path file = folder.resolve("pack.zip");
        packs(ours).make(file);
        return file;
    }

    private static String everything(Path pack) throws IOException {
        StringBuilder all = new StringBuilder();
        try (ZipFile zip = new ZipFile(pack.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                all.append(entry.getName())
                        .append('\n')
                        .append(new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return all.toString();
    }

    @Test
    void whatOneShopKnowsAnotherCanTakeAsOneDeedAndUndo() {
        know(ours, "marrow", "Marrowgate");
        know(ours, "ostler", "Ostlerby");
        Taken taken = packs(theirs).take(pack(), false, false);
        assertThat(taken.entries()).extracting(Difference::what).containsExactly(What.NEW, What.NEW);
        assertThat(catalogue(theirs).makes()).containsKeys("k-marrow", "k-ostler");
        theirs.undo(taken.deed().number());
        assertThat(catalogue(theirs).makes()).doesNotContainKeys("k-marrow", "k-ostler");
    }

    @Test
    void jobsOfOneShopMeanNothingInAnother() throws IOException {
        know(ours, "marrow", "Marrowgate");
        assertThat(everything(pack()))
                .contains("another shop")
                .doesNotContain("j-0007")
                .doesNotContain("this shop");
    }

    /** Planted everywhere a customer may stand: the contacts, and a tired note in an entry. */
    @Test
    void noCustomerEverLeaves() throws IOException {
        ours.write(
                "plant",
                w -> w.put(new Contact("O-941", "Ysolde Quarnworthy", "tel 0555 733 0199, ysolde@mail.example")));
        know(ours, "marrow", "Marrowgate");
        know(ours, "told", "as Quarnworthy said");
        know(ours, "rung", "ring 05557330199");
        know(ours, "coded", "seen on O-941");
        Path file = folder.resolve("pack.zip");
        Made made = packs(ours).make(file);
        assertThat(made.entries()).containsExactly("k-marrow");
        assertThat(made.leftOut())
                .extracting(Made.LeftOut::entry)
                .containsExactlyInAnyOrder("k-told", "k-rung", "k-coded");
        String out = (everything(file) + made.leftOut()).toLowerCase(Locale.ROOT);
        for (String planted : List.of("ysolde", "quarnworthy", "7330199", "733 0199", "o-941", "mail.example")) {
            assertThat(out.contains(planted)).as(planted).isFalse();
        }
    }

    @Test
    void aDryRunSaysWhatDiffersAndChangesNothing() {
        know(ours, "marrow", "Marrowgate");
        know(theirs, "marrow", "Marrow Gate");
        Path file = pack();
        long before = theirs.feedEnd();
        Taken dry = packs(theirs).take(file, true, true);
        assertThat(dry.deed()).isNull();
        assertThat(dry.entries()).singleElement().satisfies(entry -> {
            assertThat(entry.what()).isEqualTo(What.CHANGED);
            assertThat(entry.fields())
                    .anySatisfy(field -> assertThat(field)
                            .isEqualTo(new Difference.Field("title", "\"Marrow Gate\"", "\"Marrowgate\"")));
        });
        assertThat(theirs.feedEnd()).isEqualTo(before);
    }

    @Test
    void whatDiffersFromOnesOwnStaysUnlessToldOtherwise() {
        know(ours, "marrow", "Marrowgate");
        know(theirs, "marrow", "Marrow Gate");
        Path file = pack();
        assertThat(packs(theirs).take(file, false, false).entries())
                .extracting(Difference::what)
                .containsExactly(What.KEPT);
        assertThat(catalogue(theirs).makes().get("k-marrow").title()).isEqualTo("Marrow Gate");
        packs(theirs).take(file, true, false);
        assertThat(catalogue(theirs).makes().get("k-marrow").title()).isEqualTo("Marrowgate");
        assertThat(packs(theirs).take(file, false, false).entries())
                .extracting(Difference::what)
                .containsExactly(What.SAME);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../make/k-evil.json",
                "entries/../../k-evil.json",
                "/etc/k-evil.json",
                "C:\\k-evil.json",
                "entries\\make\\k-evil.json",
                "entries/make/../make/k-evil.json",
                "entries/make/.k-evil.json",
                "entries/make/k-evil.json/",
                "entries/spell/k-evil.json",
                "shop.db",
                "entries/make/k-\u001b[31mevil.json"
            })
    void aNameThatIsNoEntrysIsRefusedInOneLine(String name) throws IOException {
        Path file = zip(
                Map.of("entries/make/k-good.json", MAKE.formatted("good", "Good"), name, MAKE.formatted("evil", "x")));
        refused(file);
        assertThat(folder.resolve("k-evil.json")).doesNotExist();
    }

    @Test
    void aPackOfNonsenseIsRefusedInOneLineAndNothingIsTaken() throws IOException {
        refused(Files.writeString(folder.resolve("no.zip"), "PK, but no zip file"));
        refused(Files.createFile(folder.resolve("empty.zip")));
        refused(zip(Map.of()));
        refused(zip(Map.of("entries/make/k-a.json", "{")));
        refused(zip(Map.of("entries/make/k-a.json", "[".repeat(100_000))));
        refused(zip(Map.of("entries/make/k-a.json", MAKE.formatted("b", "B"))));
        refused(zip(Map.of("entries/quirk/k-a.json", MAKE.formatted("a", "A"))));
        refused(zip(Map.of("entries/make/k-a.json", "{\"id\": \"k-a\", \"title\": 7}")));
        refused(zip(Map.of(
                "entries/make/task-teardown.json", MAKE.formatted("a", "A").replace("k-a", "task-teardown"))));
        refused(zip(Map.of("entries/make/k-a.json", " ".repeat(5_000_000))));
        assertThat(theirs.deeds(5)).isEmpty();
    }

    /** Bytes turned at random: a clear line or a whole pack, never another failure. */
    @Test
    void flippedBytesNeverTakeHalf() throws IOException {
        know(ours, "marrow", "Marrowgate");
        know(ours, "ostler", "Ostlerby");
        byte[] whole = Files.readAllBytes(pack());
        SplittableRandom random = new SplittableRandom(9);
        Path file = folder.resolve("flipped.zip");
        int refused = 0;
        for (int i = 0; i < 300; i++) {
            byte[] turned = whole.clone();
            turned[random.nextInt(turned.length)] ^= (byte) (1 << random.nextInt(8));
            Files.write(file, turned);
            try {
                assertThat(packs(theirs).take(file, false, true).entries()).isNotEmpty();
            } catch (BadInput told) {
                refused++;
                assertThat(told.getMessage()).doesNotContain("\n").doesNotContain("Exception");
            }
        }
        assertThat(refused).isGreaterThan(30);
        assertThat(theirs.deeds(5)).isEmpty();
    }

    @Test
    void aFileThatIsNoPackIsNotWrittenOver() throws IOException {
        Path letter = Files.writeString(folder.resolve("letter.txt"), "dear colleague");
        assertThatThrownBy(() -> packs(ours).make(letter)).isInstanceOf(BadInput.class);
        assertThat(letter).hasContent("dear colleague");
    }

    private void refused(Path file) {
        assertThatThrownBy(() -> packs(theirs).take(file, true, false))
                .isInstanceOf(BadInput.class)
                .satisfies(told -> assertThat(told.getMessage())
                        .contains("nothing was taken")
                        .contains(file.getFileName().toString())
                        .doesNotContain("\n")
                        .doesNotContain("\u001b"));
    }

    private Path zip(Map<String, String> texts) throws IOException {
        Path file = folder.resolve("made.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, String> text : new LinkedHashMap<>(texts).entrySet()) {
                zip.putNextEntry(new ZipEntry(text.getKey()));
                zip.write(text.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        }
        return file;
    }
}
