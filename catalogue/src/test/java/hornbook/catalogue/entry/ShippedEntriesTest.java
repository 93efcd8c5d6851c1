package hornbook.catalogue.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The shipped knowledge against the project's own trade notes. */
class ShippedEntriesTest {
    private static final Catalogue SHIPPED = Catalogue.shipped();

    /**
     * Rows of each file of the trade notes, counted there; a repeated term of the word list is one word. Thirteen
     * words for complaints are the project's own, from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "TRAIT, 82",
        "QUIRK, 98",
        "FAULT, 54",
        "PART, 76",
        "TOOL, 115",
        "SUPPLY, 128",
        "OPERATION, 61",
        "USE_ON, 251",
        "TASK, 80",
        "STAGE, 20",
        "FINDING, 46",
        "CUP, 28",
        "SPRING, 11",
        "INSTRUMENT, 12",
        "CAUTION, 37",
        "STATEMENT, 36",
        "PICTOGRAM, 9",
        "ALLOY, 36",
        "GRIT, 45",
        "WORD, 2499",
        "MAKE, 0",
        "SELLER, 0",
        "MODEL, 0"
    })
    void everyRowOfTheTradeNotesIsThere(Kind kind, int rows) {
        assertThat(SHIPPED.all(kind)).hasSize(rows);
    }

    /** 2498 rows, three of them meaning the three cups of the fingerprint. */
    @Test
    void everyMeaningOfTheWordListIsThere() {
        assertThat(SHIPPED.all(Word.class).values().stream()
                        .mapToInt(w -> w.meanings().size())
                        .sum())
                .isEqualTo(2498 + 3 * 2 + 13);
    }

    @ParameterizedTest
    @CsvSource({"STOP, 18", "CARE, 41", "NOTE, 39"})
    void quirksByCaution(CautionLevel level, long count) {
        assertThat(SHIPPED.quirks().values().stream().filter(q -> q.caution() == level))
                .hasSize((int) count);
    }

    @Test
    void whatIsNamedExists() {
        List<Problem> problems = SHIPPED.all().stream()
                .flatMap(e -> Links.check(e, e.id(), SHIPPED).stream())
                .toList();
        assertThat(problems).isEmpty();
        assertThat(SHIPPED.all().stream().flatMap(e -> LinkList.of(e).stream())).hasSizeGreaterThan(3000);
    }

    @Test
    void figuresAgree() {
        assertThat(SHIPPED.all().stream().flatMap(e -> Figures.check(e, e.id()).stream()))
                .isEmpty();
    }

    @Test
    void everythingSaysWhereItComesFrom() {
        assertThat(SHIPPED.all()).allSatisfy(e -> {
            assertThat(e.source()).isNotBlank();
            assertThat(e.sureness()).isNotBlank();
            assertThat(e.title()).isNotBlank();
        });
    }

    @Test
    void numbersCanBeAsked() {
        assertThat(SHIPPED.traits().values().stream().filter(t -> t.kind() == TraitKind.NUMBER))
                .hasSize(7)
                .allSatisfy(t -> {
                    assertThat(t.spread()).isPositive();
                    assertThat(t.span()).isNotNull();
                    assertThat(t.unit()).isEqualTo("mm");
                });
    }

    /** The looks that mark, as the trade notes list them. */
    @Test
    void onlyThreeLooksLeaveAMark() {
        assertThat(SHIPPED.traits().values().stream()
                        .filter(t -> t.marking() != null)
                        .map(Trait::id))
                .containsExactly("lacquer-type", "key-material", "pad-fixing");
    }

    /** Named mistakes and their rates, as the trade notes give them beside the traits. */
    @ParameterizedTest
    @CsvSource({
        "tone-hole-rim, ring-soldered, rolled, 0.25",
        "bow-joint, glued, soldered, 0.3",
        "body-finish, nickel, silver-bright, 0.2",
        "resonator-type, snap-on-spud, seamless, 0.25",
        "pivot-screw-type, pseudo-point, headed-tapered, 0.3"
    })
    void namedMistakes(String trait, String truth, String seen, double rate) {
        assertThat(SHIPPED.traits().get(trait).mistakes()).containsExactly(new Mistake(truth, seen, rate));
    }

    @Test
    void valuesOfATraitDifferAndAreDescribed() {
        assertThat(SHIPPED.traits().values()).allSatisfy(t -> {
            Set<String> ids = t.values().stream().map(TraitValue::id).collect(Collectors.toSet());
            assertThat(ids).hasSameSizeAs(t.values());
            assertThat(t.values()).allSatisfy(v -> assertThat(v.description()).isNotBlank());
        });
    }

    @Test
    void idsAreUniqueAmongCausesToo() {
        Set<String> ids = new HashSet<>(SHIPPED.ids());
        List<String> causes = SHIPPED.faults().values().stream()
                .flatMap(f -> f.causes().stream().map(Cause::id))
                .toList();
        assertThat(causes)
                .hasSizeGreaterThan(90)
                .doesNotHaveDuplicates()
                .allSatisfy(id -> assertThat(ids).doesNotContain(id));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void filesAreLaidOutAsEntriesAreWritten(Kind kind) throws Exception {
        EntryWriter writer = new EntryWriter();
        try (InputStream in = getClass().getResourceAsStream("/hornbook/catalogue/entries/" + kind.word() + ".json")) {
            if (in == null) {
                assertThat(SHIPPED.all(kind)).isEmpty();
                return;
            }
            List<Entry> entries = new ArrayList<>(SHIPPED.all(kind).values());
            assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8)).isEqualTo(writer.writeAll(entries));
        }
    }
}
