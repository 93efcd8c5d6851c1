package hornbook.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class VisitsTest {
    private final List<ScreenName> shown = new ArrayList<>();
    private final Visits visits = new Visits(shown::add);

    @Test
    void backGoesTheWayOneCame() {
        visits.go(ScreenName.BENCH);
        visits.go(ScreenName.FIND);
        visits.go(ScreenName.JOBS);
        assertThat(visits.back()).isTrue();
        assertThat(visits.back()).isTrue();
        assertThat(visits.back()).isFalse();
        assertThat(shown)
                .containsExactly(ScreenName.BENCH, ScreenName.FIND, ScreenName.JOBS, ScreenName.FIND, ScreenName.BENCH);
    }

    @Test
    void goingWhereOneIsIsNoVisit() {
        visits.go(ScreenName.FIND);
        visits.go(ScreenName.FIND);
        assertThat(visits.back()).isFalse();
        assertThat(visits.now()).contains(ScreenName.FIND);
    }
}
