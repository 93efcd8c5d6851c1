package hornbook.catalogue.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CatalogueTest {
    private static final String MAKE =
            "{\"id\": \"k-one\", \"title\": \"One\", \"source\": \"this shop\", \"sureness\": \"fair\"}";
    private static final String MODEL = """
            {"id": "m-one-alto", "make": "k-one", "title": "One, alto", "pattern": "One", "instruments": ["alto"],
             "traits": {"tone-hole-rim": {"rolled": 0.9, "straight": 0.1}}, "horns_seen": 0,
             "source": "this shop, j-0001", "sureness": "fair"}
            """;

    @TempDir
    Path entries;

    @Test
    void ownEntriesStandBesideTheShipped() throws IOException {
        put("make/k-one.json", MAKE);
        put("model/m-one-alto.json", MODEL);
        Catalogue catalogue = Catalogue.open(entries);
        assertThat(catalogue.problems()).isEmpty();
        assertThat(catalogue.makes()).containsOnlyKeys("k-one");
        assertThat(catalogue.models()).containsOnlyKeys("m-one-alto");
        assertThat(catalogue.quirks()).hasSize(98);
        assertThat(catalogue.isOwn("k-one")).isTrue();
        assertThat(catalogue.isOwn("q-red-rot")).isFalse();
    }

    @Test
    void anOwnEntryTakesThePlaceOfTheShippedOneOfItsId() throws IOException {
        Entry shipped = Catalogue.shipped().entry("q-red-rot").orElseThrow();
        put("quirk/q-red-rot.json", new EntryWriter().write(shipped).replace("Red rot", "Rot, red"));
        Catalogue catalogue = Catalogue.open(entries);
        assertThat(catalogue.quirks()).hasSize(98);
        assertThat(catalogue.quirks().get("q-red-rot").title()).isEqualTo("Rot, red");
        assertThat(catalogue.isOwn("q-red-rot")).isTrue();
    }

    @Test
    void brokenFilesAreSetAsideAndTheRestLoads() throws IOException {
        put("make/k-one.json", MAKE);
        put("make/k-two.json", MAKE);
        put("make/k-three.json", "{");
        put("make/q-red-rot.json", MAKE.replace("k-one", "q-red-rot"));
        put("model/m-one-alto.json", MODEL.replace("0.9", "0.5"));
        put("modle/m-x.json", MODEL);
        Catalogue catalogue = Catalogue.open(entries);
        assertThat(catalogue.makes()).containsOnlyKeys("k-one");
        assertThat(catalogue.entry("q-red-rot").orElseThrow()).isInstanceOf(Quirk.class);
        assertThat(catalogue.problems())
                .allMatch(Problem::setAside)
                .extracting(p -> p.file() + "," + p.field())
                .containsExactlyInAnyOrder(
                        "modle,",
                        "make/k-two.json,id",
                        "make/k-three.json,",
                        "make/q-red-rot.json,id",
                        "model/m-one-alto.json,traits.tone-hole-rim");
    }

    @Test
    void anUnknownIdIsARemark() throws IOException {
        put("model/m-one-alto.json", MODEL);
        Catalogue catalogue = Catalogue.open(entries);
        assertThat(catalogue.models()).containsOnlyKeys("m-one-alto");
        assertThat(catalogue.problems()).singleElement().satisfies(p -> {
            assertThat(p.setAside()).isFalse();
            assertThat(p.line()).startsWith("model/m-one-alto.json, make: nothing has the id k-one");
        });
    }

    @Test
    void theDigestFollowsContentAndName() throws IOException {
        String none = Catalogue.open(entries).digest();
        put("make/k-one.json", MAKE);
        String one = Catalogue.open(entries).digest();
        put("make/k-one.json", MAKE + " ");
        String changed = Catalogue.open(entries).digest();
        assertThat(none).isEqualTo(Catalogue.shipped().digest()).hasSize(64);
        assertThat(one).isNotEqualTo(none);
        assertThat(changed).isNotIn(none, one).isEqualTo(EntryDigest.of(entries));
    }

    private void put(String file, String text) throws IOException {
        Path path = entries.resolve(file);
        Files.createDirectories(path.getParent());
        Files.writeString(path, text);
    }
}
