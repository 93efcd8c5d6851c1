package hornbook.viewer.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.indexer.brief.Fetch;
import org.junit.jupiter.api.Test;

/** Stories 1 and 2 of the project's trade notes on the bench; figures are theirs. */
class BenchStoriesTest extends OnTheBench {
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
}
