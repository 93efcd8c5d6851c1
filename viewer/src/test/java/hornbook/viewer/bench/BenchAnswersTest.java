package hornbook.viewer.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.identify.Seen;
import hornbook.viewer.work.Work;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Answering, changing, taking back and skipping. */
class BenchAnswersTest extends OnTheBench {
    @Test
    void theInstrumentIsAskedForFirst() {
        assertThat(asked()).isEqualTo("family-member");
        model.press("alto");
        assertThat(asked()).isNotEqualTo("family-member");
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
}
