package hornbook.catalogue.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.EntryWriter;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Problem;
import hornbook.catalogue.entry.Provenance;
import hornbook.catalogue.entry.Provenance.Basis;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class EntryBookTest {
    private static final Catalogue SHIPPED = Catalogue.shipped();

    @TempDir
    Path folder;

    private Books books;

    @BeforeEach
    void open() {
        books = Books.open(folder, Access.WRITE);
    }

    @AfterEach
    void close() {
        books.close();
    }

    private EntryBook book() {
        return new EntryBook(Catalogue.open(folder.resolve("entries")), books);
    }

    private static Draft draft(String id) {
        return Draft.of(SHIPPED.entry(id).orElseThrow());
    }

    @Test
    void anOwnCopyStandsOverTheShippedOneAndGoesAgain() {
        Draft changed = draft("q-red-rot").set(Spot.of("confirm"), "Scratch it inside the bow.");
        Proposal proposal = book().propose(changed);
        assertThat(proposal.standing()).isEqualTo(Standing.OVER_SHIPPED);
        assertThat(proposal.changes())
                .singleElement()
                .satisfies(c -> assertThat(c.field()).isEqualTo("confirm"))
                .satisfies(c -> assertThat(c.after()).isEqualTo("Scratch it inside the bow."));
        assertThat(book().catalogue().isOwn("q-red-rot")).isFalse();

        book().put(Kind.QUIRK, changed.json());
        assertThat(book().catalogue().isOwn("q-red-rot")).isTrue();
        assertThat(book().catalogue().quirks().get("q-red-rot").confirm()).isEqualTo("Scratch it inside the bow.");
        assertThat(book().catalogue().problems()).isEmpty();
        assertThat(books.deeds(1).getFirst().title()).startsWith("own copy of quirk “");

        assertThat(book().takeAway("q-red-rot"))
                .contains(SHIPPED.entry("q-red-rot").orElseThrow());
        assertThat(book().catalogue().isOwn("q-red-rot")).isFalse();
        books.undo(books.deeds(1).getFirst().number());
        assertThat(book().catalogue().isOwn("q-red-rot")).isTrue();
        books.undo(firstStanding());
        assertThat(book().catalogue().entry("q-red-rot")).isEqualTo(SHIPPED.entry("q-red-rot"));
    }

    private long firstStanding() {
        return books.deeds(9).stream()
                .filter(d -> d.title().startsWith("own copy"))
                .findFirst()
                .orElseThrow()
                .number();
    }

    @Test
    void aNewOneIsMadeFromNothing() {
        EntryBook book = book();
        assertThat(book.idFor(Kind.PART, "Thumb hook, brazed – wide")).isEqualTo("part-thumb-hook-brazed-wide");
        assertThat(book.idFor(
                        Kind.PART, SHIPPED.entry("part-neck").orElseThrow().id().substring(5)))
                .isEqualTo("part-neck-2");
        assertThat(book.idFor(Kind.MAKE, "Ödmark")).isEqualTo("k-odmark");
        Draft draft = Draft.blank(Kind.MAKE).set(Spot.of("id"), "k-odmark").set(Spot.of("title"), "Ödmark");
        assertThat(book.propose(draft).problems())
                .extracting(Problem::field)
                .containsExactlyInAnyOrder("source", "sureness");
        assertThatThrownBy(() -> book.put(Kind.MAKE, draft.json())).isInstanceOf(BadInput.class);
        Draft whole = draft.set(Spot.of("source"), "this shop")
                .set(Spot.of("sureness"), "sure")
                .set(Spot.of("other_names"), "");
        assertThat(book.propose(whole).standing()).isEqualTo(Standing.NEW);
        Entry made = book.put(Kind.MAKE, whole.json());
        assertThat(book().catalogue().makes()).containsEntry("k-odmark", (hornbook.catalogue.entry.Make) made);
        assertThatThrownBy(() -> book().put(Kind.MAKE, whole.json()))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("nothing to save");
        assertThat(book().takeAway("k-odmark")).isEmpty();
        assertThat(book().catalogue().entry("k-odmark")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "caution | halt | “halt” is not one of stop, care, note",
                "when | wall-state= | ",
                "id | Red Rot | may hold small letters, digits, hyphens and dots only",
                "id | part-neck | is also the id of a part, "
            })
    void aWrongFieldIsNamed(String field, String words, String why) {
        Proposal proposal = book().propose(draft("q-red-rot").set(Spot.of(field), words));
        assertThat(proposal.fit()).isFalse();
        assertThat(proposal.problems()).anySatisfy(problem -> {
            assertThat(problem.field()).isEqualTo(field);
            assertThat(problem.why()).startsWith(why == null ? "" : why);
        });
    }

    /** The control: nothing is wrong, and nothing differs, whichever shipped entry is taken as it is. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void aShippedEntryTakenAsItIsDiffersInNothing(Kind kind) {
        EntryBook book = new EntryBook(SHIPPED, books);
        SHIPPED.all(kind).values().stream().limit(25).forEach(entry -> {
            Proposal proposal = book.propose(Draft.of(entry));
            assertThat(proposal.problems()).isEmpty();
            assertThat(proposal.changes()).isEmpty();
            assertThat(proposal.fit()).isFalse();
        });
    }

    /** Each field that a shipped entry fills can be asked for, whatever its kind. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void theFormHasEveryFieldOfTheFile(Kind kind) {
        List<String> asked = Forms.of(kind).stream().map(Field::name).toList();
        SHIPPED.all(kind)
                .values()
                .forEach(entry -> assertThat(asked)
                        .containsAll(new EntryWriter().tree(entry).propertyNames()));
        assertThat(asked).contains("id", "title", "source", "sureness");
    }

    @Test
    void aBrokenFileIsToldMendedAndTakenAway() throws IOException {
        Path file = folder.resolve("entries/quirk/q-mine.json");
        Files.createDirectories(file.getParent());
        Files.writeString(
                file,
                draft("q-red-rot")
                        .set(Spot.of("id"), "q-mine")
                        .without(Spot.of("stage"))
                        .json());
        assertThat(book().broken())
                .singleElement()
                .satisfies(p -> assertThat(p.line()).startsWith("quirk/q-mine.json, stage: is missing"));
        Mend mend = book().mend("quirk/q-mine.json").orElseThrow();
        Draft mended = mend.draft().set(Spot.of("stage"), "stage-inspect");
        book().put(Kind.QUIRK, mended.json(), mend.file());
        assertThat(book().broken()).isEmpty();
        assertThat(book().catalogue().quirks()).containsKey("q-mine");

        Files.writeString(file, "{ no JSON");
        assertThat(book().mend("quirk/q-mine.json")).isEmpty();
        book().takeAwayFile("quirk/q-mine.json");
        assertThat(book().broken()).isEmpty();
        books.undo(books.deeds(1).getFirst().number());
        assertThat(file).hasContent("{ no JSON");
    }

    /** What is written of a source is read again as the sort that was meant. */
    @ParameterizedTest
    @CsvSource({
        "THIS_SHOP, j-0237",
        "THIS_SHOP, ''",
        "COMMON_PRACTICE, ''",
        "MEMORY, ''",
        "MEMORY, seen once",
        "PUBLISHED, ISO 965-1"
    })
    void aSourceIsReadAgainAsWhatWasMeant(Basis basis, String detail) {
        Provenance written = new Provenance(Telling.source(basis, detail), "sure");
        assertThat(written.basis()).isEqualTo(basis);
        assertThat(written.source()).contains(detail);
        if (detail.startsWith("j-")) {
            assertThat(written.jobs()).containsExactly(detail);
        }
    }

    @Test
    void whatMayBeNamedIsOffered() {
        Naming naming = new Naming(SHIPPED);
        Draft quirk = draft("q-red-rot");
        assertThat(naming.choices(List.of("tool"), "loup", quirk, Spot.of("tools", "2", "id")))
                .extracting(Choice::text)
                .contains("tool-loupe");
        assertThat(naming.choices(List.of("condition"), "always & wall-state=pi", quirk, Spot.of("when")))
                .extracting(Choice::text)
                .containsExactly("always & wall-state=pitted");
        assertThat(naming.choices(List.of("condition"), "resonator", quirk, Spot.of("when")))
                .extracting(Choice::text)
                .contains("resonator-type");
        assertThat(naming.choices(
                        List.of("value"), "roll", Draft.blank(Kind.MODEL), Spot.of("traits", "tone-hole-rim", "")))
                .extracting(Choice::text)
                .contains("rolled");
        assertThat(naming.title("tool-loupe")).isNotBlank();
    }

    @Test
    void linesOfAListAreComparedByWhatTheyAreCalled() {
        Draft fault = draft("f-low-warble");
        Draft less = fault.without(Spot.of("causes", "1"));
        assertThat(book().propose(less).changes())
                .isNotEmpty()
                .allSatisfy(c -> assertThat(c.after()).isNull());
    }
}
