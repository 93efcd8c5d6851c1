package hornbook.viewer.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.identify.Candidate;
import hornbook.catalogue.identify.Confirmation;
import hornbook.catalogue.identify.NewModel;
import hornbook.catalogue.identify.NextLook;
import hornbook.catalogue.identify.Seen;
import hornbook.indexer.brief.Fetch;
import hornbook.indexer.brief.QuirkLine;
import hornbook.shared.shop.Consent;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.viewer.bench.BenchBook.Reason;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bench without a window, on the demonstration shop. Figures are those of the project's trade notes, stories 1, 2. */
class BenchModelTest {
    @TempDir
    static Path folder;

    private static Workshop shop;

    private BenchModel model;

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder);
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    static BenchModel model(Workshop shop, Work work) {
        return new BenchModel(
                work,
                new Bench(
                        shop::catalogue,
                        shop::identify,
                        shop::brief,
                        shop.jobs(),
                        job -> !shop.books().where(Consent.class, "job", job).isEmpty()),
                new BenchBook(shop.books(), shop::confirm, shop::catalogue, shop.jobBook()));
    }

    @BeforeEach
    void clear() {
        model = model(shop, Work.atOnce());
        model.refresh();
    }

    @Test
    void theInstrumentIsAskedForFirst() {
        assertThat(asked()).isEqualTo("family-member");
        model.press("alto");
        assertThat(asked()).isNotEqualTo("family-member");
    }

    @Test
    void storyOneStepByStep() {
        model.plain(true);
        model.press("alto");
        assertThat(probability("m-corvane-schoolroom-alto")).isCloseTo(0.096, within(0.02));
        assertThat(unlisted()).isCloseTo(0.079, within(0.02));
        answer("bell-brace", "three-point");
        assertThat(probability("m-halverick-drumlin-alto")).isCloseTo(0.157, within(0.02));
        answer("octave-mechanism", "auto-slide");
        assertThat(probability("m-halverick-drumlin-alto")).isCloseTo(0.336, within(0.02));
        answer("tone-hole-make", "soldered-on");
        assertThat(probability("m-halverick-drumlin-alto")).isCloseTo(0.924, within(0.02));
        model.serial("3660?8");
        model.mark("Merrivane");
        assertThat(probability("m-halverick-drumlin-alto")).isGreaterThan(0.97);
        assertThat(brief().stream().limit(2))
                .containsExactlyInAnyOrder("q-soldered-chimney-leak", "q-soldered-chimney-heat");
        assertThat(model.view().brief().fetch()).anySatisfy(f -> {
            assertThat(f.lot()).isEqualTo("lot-0465");
            assertThat(f.drawer()).isEqualTo("d-apoth-r1c5");
        });
    }

    @Test
    void storyTwoNamesTheDrawerOfTheSpanner() {
        model.lay("job", "j-0237");
        assertThat(model.view().horn().horn()).isEqualTo("h-194");
        assertThat(brief()).contains("q-threaded-bearing");
        Fetch spanner = model.view().brief().fetch().stream()
                .filter(f -> f.what().equals("tool-pin-spanner"))
                .findFirst()
                .orElseThrow();
        assertThat(spanner.drawer()).isEqualTo("d-card-r3c6");
        assertThat(spanner.label()).isEqualTo("bumper holders");
        assertThat(model.view().brief().jobs()).anyMatch(j -> j.id().equals("j-0164"));
    }

    @Test
    void anAnswerCanBeChangedAndTakenBack() {
        model.press("alto");
        double before = probability("m-corvane-schoolroom-alto");
        answer("bell-brace", "ring");
        answer("bell-brace", "three-point");
        assertThat(model.view().horn().looks()).hasSize(2);
        model.takeBackLast();
        assertThat(probability("m-corvane-schoolroom-alto")).isCloseTo(before, within(1e-12));
        assertThat(model.view().horn().traits()).containsExactly("family-member");
    }

    @Test
    void whatTheBooksHoldCanBeTakenBackHereAndStaysInTheBooks() {
        model.lay("horn", "h-192");
        double with = probability("m-halverick-drumlin-alto");
        model.takeBack("tone-hole-make");
        assertThat(model.view().horn().looks("tone-hole-make")).containsExactly(new Seen.CannotTell("tone-hole-make"));
        assertThat(probability("m-halverick-drumlin-alto")).isLessThan(with);
        model.lay("horn", "h-192");
        assertThat(probability("m-halverick-drumlin-alto")).isCloseTo(with, within(1e-12));
    }

    @Test
    void severalMayBeMarkedAndCannotTellChangesNothing() {
        model.press("alto");
        model.choose("bell-brace");
        model.several(true);
        model.press("ring");
        model.press("three-point");
        model.press("two-bar");
        model.press("two-bar");
        model.done();
        assertThat(model.view().horn().looks("bell-brace"))
                .containsExactly(new Seen.OneOf("bell-brace", List.of("ring", "three-point")));
        double before = probability("m-halverick-drumlin-alto");
        String asked = asked();
        model.cannotTell();
        assertThat(probability("m-halverick-drumlin-alto")).isCloseTo(before, within(1e-12));
        assertThat(asked()).isNotEqualTo(asked);
    }

    @Test
    void ofATraitOfManyEachIsThereOrNotOrNotLookedAt() {
        model.choose("flat-spring-use");
        model.press("palm-and-side");
        model.press("octave-and-gs");
        model.press("octave-and-gs");
        model.done();
        assertThat(model.view().horn().looks("flat-spring-use").getFirst().written())
                .isEqualTo("flat-spring-use=palm-and-side|no:octave-and-gs");
        model.choose("flat-spring-use");
        model.press("none");
        model.done();
        assertThat(model.view().horn().looks("flat-spring-use").getFirst().written())
                .contains("no:palm-and-side", "no:neck-octave-only")
                .doesNotContain("none");
    }

    @Test
    void aSizeIsTakenAsWrittenAndRubbishIsRefusedInALine() {
        model.choose("rod-diameter");
        model.write("three");
        assertThat(model.view().said()).contains("rod-diameter").doesNotContain("Exception");
        assertThat(asked()).isEqualTo("rod-diameter");
        model.write(".112\"");
        assertThat(model.view().horn().looks("rod-diameter").getFirst().written())
                .isEqualTo("rod-diameter=2.8448 mm"); // 1 in = 25.4 mm by definition
    }

    @Test
    void whatIsSkippedIsNotAskedAgainUntilItIsChosen() {
        model.skip();
        assertThat(asked()).isNotEqualTo("family-member");
        String second = asked();
        model.skip();
        assertThat(asked()).isNotIn("family-member", second);
        model.choose(second);
        assertThat(asked()).isEqualTo(second);
    }

    @Test
    void itIsThisTakesANewHornInWritesItsLooksAndCanBeUndone() {
        int horns = shop.books().all(Horn.class).size();
        model.press("alto");
        answer("bell-brace", "three-point");
        model.serial("36612");
        model.deeds().confirm("m-halverick-drumlin-alto", Confirmation.NAME, new Reason("quick", "sticks on low C"));
        String horn = Objects.requireNonNull(model.view().horn().horn());
        assertThat(shop.books().find(Horn.class, horn).orElseThrow())
                .returns("m-halverick-drumlin-alto", Horn::model)
                .returns("alto", Horn::instrument)
                .returns("36612", Horn::serial)
                .returns("sure", Horn::sureness);
        assertThat(shop.books().where(Finding.class, "horn", horn))
                .extracting(Finding::what)
                .containsExactly("bell-brace");
        assertThat(shop.books().where(Job.class, "horn", horn))
                .extracting(Job::complaint)
                .containsExactly("sticks on low C");
        model.deeds().undo();
        assertThat(shop.books().find(Horn.class, horn).orElseThrow().model()).isEqualTo("unlisted");
        assertThat(shop.books().where(Finding.class, "horn", horn)).isEmpty();
        assertThat(shop.books().all(Horn.class)).hasSize(horns + 1);
    }

    @Test
    void anEntryIsMadeFromTheHornAndWeighedFromThenOn() {
        model.lay("job", "j-0240");
        Reason none = new Reason("quick", "");
        model.deeds().entry(new NewModel("k-sorakane", false, "Model Twelve", null), none);
        String first = model.view().said();
        model.deeds().entry(new NewModel("Oddhaven", true, "Lantern Street", null), none);
        assertThat(model.view().said()).as(first).contains("Oddhaven Lantern Street");
        assertThat(shop.catalogue().models()).containsKey("m-oddhaven-lantern-street-alto");
        assertThat(Catalogue.open(folder.resolve("entries")).problems()).isEmpty();
        assertThat(model.view().weighed().answer().candidates())
                .extracting(Candidate::id)
                .contains("m-oddhaven-lantern-street-alto");
        model.deeds().undo();
        assertThat(shop.catalogue().models()).doesNotContainKey("m-oddhaven-lantern-street-alto");
    }

    @Test
    void aLookThatMarksIsOfferedOnceTheOwnerSaidYes() {
        model.lay("job", "j-0238");
        assertThat(model.view().horn().consent()).isFalse();
        NextLook needle = marking("pad-fixing");
        assertThat(model.view().mayMark(needle)).isFalse();
        model.choose("lacquer-type");
        assertThat(asked()).isNotEqualTo("lacquer-type");
        assertThat(model.view().said()).contains("leaves a mark");
        model.deeds().agreed();
        assertThat(shop.books().where(Consent.class, "job", "j-0238")).hasSize(1);
        assertThat(model.view().mayMark(needle)).isTrue();
        // Acetone can ruin celluloid, and looks that would tell of celluloid are still open.
        assertThat(model.view().mayMark(marking("lacquer-type"))).isFalse();
        model.deeds().undo();
        assertThat(shop.books().where(Consent.class, "job", "j-0238")).isEmpty();
    }

    @Test
    void whatTakesAPartOffWaitsButMayBeAnsweredWhereItIsOff() {
        model.press("alto");
        assertThat(model.view().look("pad-cup-type")).isEmpty();
        assertThat(model.view().rest()).extracting(Trait::id).contains("pad-cup-type", "thread-hand");
        model.choose("pad-cup-type");
        assertThat(model.view().waits(model.view().asking().trait())).isTrue();
        model.press("flat");
        assertThat(model.view().horn().lookedAt("pad-cup-type")).isTrue();
        assertThat(model.view().rest()).extracting(Trait::id).doesNotContain("pad-cup-type");
    }

    @Test
    void theNewestAnswerWins() {
        List<Runnable> shown = Collections.synchronizedList(new ArrayList<>());
        try (Work beside = Work.beside(shown::add)) {
            model = model(shop, beside);
            model.refresh();
            settle(shown);
            model.press("alto");
            model.press("tenor"); // before the first is weighed
            settle(shown);
            assertThat(model.view().horn().looks("family-member").getFirst().value())
                    .isEqualTo("tenor");
            assertThat(model.view().weighed().answer().candidates().getFirst().id())
                    .endsWith("-tenor");
        }
    }

    /** Runs what comes back from beside, until nothing has come for a while. */
    private static void settle(List<Runnable> shown) {
        for (int quiet = 0; quiet < 30; quiet++) {
            List<Runnable> now;
            synchronized (shown) {
                now = List.copyOf(shown);
                shown.clear();
            }
            now.forEach(Runnable::run);
            quiet = now.isEmpty() ? quiet : 0;
            sleep();
        }
    }

    private static void sleep() {
        try {
            Thread.sleep(100);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    @Test
    void aNumberOrNameThatTheBooksHoldCanBeTakenBackToo() {
        model.lay("horn", "h-192");
        assertThat(model.view().horn()).returns("3660?8", InHand::serial).returns("Merrivane", InHand::mark);
        model.serial("");
        model.mark("");
        assertThat(model.view().horn().question().serial()).isEqualTo("?");
        model.lay("horn", "h-194");
        assertThat(model.view().horn().question().mark()).isNull(); // the books have no name on it
        assertThat(model.view().weighed().answer().remarks()).isEmpty();
    }

    @Test
    void theHornsInTheShopAreOffered() {
        model.lookRound();
        BenchView.Side.Here here = (BenchView.Side.Here) model.view().side();
        assertThat(here.horns())
                .extracting(h -> h.id())
                .contains("j-0235", "j-0237")
                .doesNotContain("j-0164");
        assertThat(model.back()).isTrue();
    }

    @Test
    void aHornThatIsNotThereIsSaid() {
        model.lay("horn", "h-999");
        assertThat(model.view().said()).contains("h-999");
    }

    private void answer(String trait, String value) {
        model.choose(trait);
        model.press(value);
    }

    private NextLook marking(String trait) {
        return model.view().weighed().answer().marking().stream()
                .filter(l -> l.trait().equals(trait))
                .findFirst()
                .orElseThrow();
    }

    private String asked() {
        return Objects.requireNonNull(model.view().asking().trait()).id();
    }

    private double probability(String id) {
        return model.view().weighed().answer().candidates().stream()
                .filter(c -> c.id().equals(id))
                .mapToDouble(Candidate::probability)
                .sum();
    }

    private double unlisted() {
        return model.view().weighed().answer().unlisted();
    }

    private List<String> brief() {
        return model.view().brief().quirks().stream().map(QuirkLine::id).toList();
    }
}
