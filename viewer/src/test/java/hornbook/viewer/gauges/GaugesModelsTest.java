package hornbook.viewer.gauges;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.shared.gauge.GaugeQuestion;
import hornbook.shared.gauge.SizeForms;
import hornbook.shared.measure.StandardSizes;
import hornbook.viewer.work.Work;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The panes' models without a widget. */
class GaugesModelsTest {
    private static final StandardSizes TABLES = StandardSizes.load();
    private static final Threads THREADS = new Threads(TABLES);

    private static ThreadModel threads() {
        return new ThreadModel(Work.atOnce(), () -> THREADS);
    }

    private static SizeModel sizes() {
        return new SizeModel(Work.atOnce(), text -> new SizeForms(TABLES).answer(GaugeQuestion.of(text)));
    }

    /** Number drill 40 is .0980 in (ASME B94.11M). */
    @Test
    void aDrillNumberIsASize() {
        SizeModel model = sizes();
        model.typed("#40");
        assertThat(model.view().answer().thou()).isEqualByComparingTo("98");
        model.typed("");
        assertThat(model.view()).isEqualTo(SizeView.NOTHING);
    }

    @Test
    void whatIsNoSizeSaysSoAndTheNextKeyMendsIt() {
        SizeModel model = sizes();
        model.typed("5/0\"");
        assertThat(model.view().trouble()).contains("nought");
        model.typed("5/64\"");
        assertThat(model.view().trouble()).isNull();
    }

    /** The worked case of the shop's two guard screws: five turns in 3.0 mm, five in 2.5 mm. */
    @ParameterizedTest
    @CsvSource({"3.0, M3x0.6", "2.5, M3x0.5"})
    void turnsOverALengthTellTheThread(String over, String thread) {
        ThreadModel model = threads();
        model.change(a -> a.with(ThreadAsked.Field.SIZE, "2.95"));
        model.change(a -> a.with(ThreadAsked.Field.TURNS, "5"));
        model.change(a -> a.with(ThreadAsked.Field.OVER, over));
        assertThat(model.view().answer().threads().getFirst().designation()).isEqualTo(thread);
        assertThat(model.view().overlay().bindsAfterTurns()).isPositive();
    }

    @Test
    void twoWaysToGiveThePitchAreOneTooMany() {
        ThreadModel model = threads();
        model.change(a -> a.with(ThreadAsked.Field.SIZE, "2.95"));
        model.change(a -> a.with(ThreadAsked.Field.PITCH, "0.6"));
        model.change(a -> a.with(ThreadAsked.Field.TPI, "40"));
        assertThat(model.view().trouble()).contains("one way");
        model.change(a -> a.with(ThreadAsked.Field.TPI, ""));
        assertThat(model.view().trouble()).isNull();
    }

    @ParameterizedTest
    @CsvSource({"SIZE, banana, Across the crests:", "FORM, 400, Angle:", "WALL, -1, Metal round a stripped hole:"})
    void whatCannotBeReadIsNamedAsItsFieldIs(ThreadAsked.Field field, String typed, String named) {
        ThreadModel model = threads();
        model.change(a -> a.with(ThreadAsked.Field.SIZE, "2.95"));
        model.change(a -> a.with(field, typed));
        assertThat(model.view().trouble()).startsWith(named).contains(typed);
    }

    /** ISO 68-1: depth of a screw's thread 0.6134 of the pitch; the drawing's flanks stand at the angle. */
    @Test
    void theDrawnFlankHasItsAngle() {
        Profile profile = new Profile(0.5, 3, 60);
        assertThat(profile.depth()).isCloseTo(0.3067, within(1e-4));
        Profile.Corner crest = profile.corners(1).get(1);
        Profile.Corner root = profile.corners(1).get(2);
        double half = Math.toDegrees(Math.atan((root.along() - crest.along()) / (crest.out() - root.out())));
        assertThat(half).isCloseTo(30, within(0.1));
    }
}
