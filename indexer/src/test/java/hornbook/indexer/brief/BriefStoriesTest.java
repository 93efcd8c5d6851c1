package hornbook.indexer.brief;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.CautionLevel;
import hornbook.catalogue.exchange.KnowledgeSheets;
import hornbook.catalogue.identify.Identify;
import hornbook.catalogue.identify.Question;
import hornbook.catalogue.may.May;
import hornbook.shared.exchange.Import;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stories 1 and 2 of the project's trade notes, on the demonstration shop. */
class BriefStoriesTest {
    private static final Path FILES = Path.of("../viewer/src/main/resources/hornbook/viewer/demo");

    @TempDir
    static Path folder;

    private static Books books;
    private static Catalogue catalogue;
    private static Brief brief;

    @BeforeAll
    static void open() {
        books = Books.open(folder, Access.WRITE);
        new Import(books, new KnowledgeSheets(Catalogue.shipped())).from(FILES, false);
        catalogue = Catalogue.open(folder.resolve("entries"));
        brief = new Brief(catalogue, books, new Identify(catalogue, books), new May(catalogue));
    }

    @AfterAll
    static void close() {
        books.close();
    }

    private static BriefAnswer about(String horn) {
        return brief.answer(BriefQuestion.of(Question.of(List.of()).about(horn).asPlain()));
    }

    @Test
    void theDrumlinsSolderedChimneysComeFirst() {
        BriefAnswer answer = about("h-192");
        assertThat(answer.model()).isEqualTo("m-halverick-drumlin-alto");
        assertThat(answer.quirks().subList(0, 2))
                .extracting(QuirkLine::id)
                .containsExactlyInAnyOrder("q-soldered-chimney-leak", "q-soldered-chimney-heat");
        assertThat(answer.quirks())
                .extracting(QuirkLine::id)
                .contains("q-octave-slide-wear", "q-no-adjusting-screws", "q-rod-exit-blocked")
                .doesNotHaveDuplicates();
        assertThat(answer.takingDown()).first().extracting(t -> t.piece()).isEqualTo("neck");
    }

    @Test
    void whoKnowsTheModelNeedsNoLooks() {
        BriefAnswer answer =
                brief.answer(BriefQuestion.of(Question.of(List.of()).takenFor("m-halverick-drumlin-alto")));
        assertThat(answer.model()).isEqualTo("m-halverick-drumlin-alto");
        assertThat(answer.quirks())
                .extracting(QuirkLine::id)
                .contains("q-soldered-chimney-leak", "q-octave-slide-wear");
        assertThat(fetch(answer, "part-octave-mech").lot()).isEqualTo("lot-0465");
        assertThat(answer.threads()).isNotEmpty();
    }

    @Test
    void theSpareOctaveSlideIsNamedWithItsDrawer() {
        Fetch slide = fetch(about("h-192"), "part-octave-mech");
        assertThat(slide.lot()).isEqualTo("lot-0465");
        assertThat(slide.drawer()).isEqualTo("d-apoth-r1c5");
        assertThat(slide.label()).isEqualTo("Halv octave");
        assertThat(slide.onHand()).isEqualTo("2");
    }

    @Test
    void theOtherHornIsStoppedBeforeAnyPrice() {
        BriefAnswer answer = about("h-193");
        QuirkLine shortBody = quirk(answer, "q-body-length-short");
        assertThat(shortBody.caution()).isEqualTo(CautionLevel.STOP);
        assertThat(shortBody.relevance()).isGreaterThan(0.9);
        assertThat(answer.stops()).contains(shortBody.title());
        assertThat(order(shortBody.stage())).isLessThan(order("stage-quote"));
    }

    private static int order(String stage) {
        return catalogue.stages().get(stage).order();
    }

    @Test
    void theSleeveSetsTheKey() {
        QuirkLine bearing = quirk(about("h-194"), "q-threaded-bearing");
        assertThat(bearing.caution()).isEqualTo(CautionLevel.CARE);
        assertThat(bearing.possible()).isFalse();
        assertThat(bearing.bites()).contains("sleeve");
        assertThat(bearing.whatToDo()).containsIgnoringCase("clock position");
    }

    @Test
    void theSpannersDrawerIsTheCardCatalogue() {
        Fetch spanner = fetch(about("h-194"), "tool-pin-spanner");
        assertThat(spanner.drawer()).isEqualTo("d-card-r3c6");
        assertThat(spanner.label()).isEqualTo("bumper holders");
        assertThat(spanner.wantedBy()).contains("q-threaded-bearing");
    }

    @Test
    void theOpenLotOfSleevesIsOfferedAndTheReserveLeftAlone() {
        BriefAnswer answer = about("h-194");
        List<Fetch> sleeves = answer.fetch().stream()
                .filter(f -> f.what().equals("part-pivot-sleeve"))
                .toList();
        assertThat(sleeves.getFirst().lot()).isEqualTo("lot-0933");
        assertThat(sleeves.getFirst().drawer()).isEqualTo("d-apoth-r4c8");
        assertThat(sleeves.getFirst().onHand()).isEqualTo("7");
        assertThat(answer.fetch()).extracting(Fetch::lot).doesNotContain("lot-0935");
        Question asked = Question.of(List.of()).about("h-194").asPlain();
        assertThat(brief.answer(new BriefQuestion(asked, true)).fetch())
                .as("control: the reserve, once it is asked for")
                .extracting(Fetch::lot)
                .contains("lot-0935");
    }

    @Test
    void theJobOnTheSamePatternSaysHowItWent() {
        PastJob job = about("h-194").jobs().stream()
                .filter(j -> j.id().equals("j-0164"))
                .findFirst()
                .orElseThrow();
        assertThat(job.kin()).isEqualTo(Kin.PATTERN);
        assertThat(job.went()).isEqualTo("rough");
        assertThat(job.wentNote()).contains("spanner");
        assertThat(job.minutes()).isEqualTo(1103);
    }

    @Test
    void whatIsPossibleNamesTheLookThatSettlesIt() {
        assertThat(about("h-192").quirks())
                .filteredOn(QuirkLine::possible)
                .isNotEmpty()
                .allSatisfy(q -> assertThat(q.settledBy()).isNotNull());
    }

    /** Thresholds of the project's definitions: stop from .10, care from .30, note from .50. */
    @Test
    void onlyWhatIsLikelyEnoughIsSaid() {
        for (String horn : List.of("h-192", "h-193", "h-194", "h-195")) {
            assertThat(about(horn).quirks())
                    .allSatisfy(q -> assertThat(q.relevance())
                            .isGreaterThanOrEqualTo(
                                    q.caution() == CautionLevel.STOP
                                            ? 0.10
                                            : q.caution() == CautionLevel.CARE ? 0.30 : 0.50));
        }
    }

    @Test
    void stagesRunInOrderAfterTheStops() {
        List<QuirkLine> rest = about("h-194").quirks().stream()
                .filter(q -> q.caution() != CautionLevel.STOP)
                .toList();
        assertThat(rest).extracting(q -> order(q.stage())).isSorted();
    }

    /** Story 3: snap-on spuds and rolled rims are stops; the keepsake is never offered. */
    @Test
    void theLanternistsDiscsAreNotTakenFromThePattern() {
        BriefAnswer answer = about("h-195");
        assertThat(answer.quirks()).extracting(QuirkLine::id).contains("q-snap-on-spud", "q-rolled-rim-no-file");
        assertThat(answer.fetch()).extracting(Fetch::lot).doesNotContain("lot-0496", "lot-0490");
    }

    @Test
    void threadsCautionsAndWhatMayNotBeUsedStandInIt() {
        BriefAnswer answer = about("h-192");
        assertThat(answer.threads())
                .anyMatch(t -> t.use().equals("pivot") && t.designation().equals("3-48 UNC"));
        assertThat(answer.pads()).containsKey("cup-low-c");
        assertThat(answer.keyHeights()).containsKey("cup-low-c");
        assertThat(answer.cautions()).isNotEmpty().anyMatch(c -> c.text().contains("safety data sheet"));
        assertThat(answer.mayNot()).isNotEmpty();
    }

    private static Fetch fetch(BriefAnswer answer, String what) {
        return answer.fetch().stream()
                .filter(f -> f.what().equals(what))
                .findFirst()
                .orElseThrow();
    }

    private static QuirkLine quirk(BriefAnswer answer, String id) {
        return answer.quirks().stream()
                .filter(q -> q.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Old 3 x 0.6 posts: the quirk of the trade notes says a modern M3x0.5 starts two turns and strips it. */
    @Test
    void whatNotToPutIntoAnOldMetricPostIsNamed() {
        assertThat(about("h-194").threads())
                .filteredOn(line -> line.use().equals("hinge-rod"))
                .first()
                .satisfies(rod -> assertThat(rod.lookAlikes())
                        .allMatch(alike -> alike.hole().equals(rod.designation()))
                        .extracting(alike -> alike.screw())
                        .contains("M3x0.5"));
    }
}
