package hornbook.shared.gauge;

import hornbook.shared.gauge.GaugeAnswer.Near;
import hornbook.shared.gauge.GaugeAnswer.Pad;
import hornbook.shared.gauge.GaugeAnswer.ThreadSizes;
import hornbook.shared.measure.Length;
import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.PadSize;
import hornbook.shared.measure.Reading;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.measure.Thread;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Answers what a size is in every form. */
public final class SizeForms {
    private static final Length LARGEST = Length.ofMillimetres("2000");

    private final SizeReader reader;
    private final Scales scales;

    public SizeForms(StandardSizes tables) {
        this.reader = tables.reader();
        this.scales = new Scales(tables);
    }

    /** The answer, or one line that says why the text is no size. */
    public Reading<GaugeAnswer> answer(GaugeQuestion question) {
        Reading<Measured> size = reader.measured(question.text(), question.bare());
        if (size instanceof Reading.Read<Measured>(Measured measured)) {
            return within(question, measured).map(fit -> answer(question, fit, Optional.empty()));
        }
        Reading<Thread> thread = reader.thread(question.text());
        return thread instanceof Reading.Read<Thread>(Thread found)
                ? Reading.read(answer(question, Measured.single(found.major()), Optional.of(found)))
                : size.map(measured -> answer(question, measured, Optional.empty()));
    }

    private static Reading<Measured> within(GaugeQuestion question, Measured measured) {
        return measured.low().nanometres() <= 0 || measured.high().compareTo(LARGEST) > 0
                ? Reading.refused(question.text(), "is outside what any gauge here measures: above 0 to 2000 mm")
                : Reading.read(measured);
    }

    private GaugeAnswer answer(GaugeQuestion question, Measured measured, Optional<Thread> thread) {
        Length size = measured.nominal();
        boolean single = measured.kind() == Measured.Kind.SINGLE;
        List<Scale> all = scales.reaching(measured.low(), measured.high());
        return new GaugeAnswer(
                question.text(),
                size,
                single ? Optional.empty() : Optional.of(measured.low()),
                single ? Optional.empty() : Optional.of(measured.high()),
                size.millimetres(),
                rounded(size, LengthUnit.INCH, 5),
                rounded(size, LengthUnit.THOU, 2),
                thread.map(SizeForms::sizes),
                all.stream().map(scale -> scale.around(size)).toList(),
                single ? List.of() : inside(all, measured),
                pad(size, question.tie()));
    }

    private static List<Near> inside(List<Scale> all, Measured measured) {
        return all.stream()
                .flatMap(scale -> scale.between(measured.low(), measured.high()))
                .map(mark -> mark.near(measured.nominal()))
                .sorted(Comparator.comparing(Near::size))
                .toList();
    }

    private static BigDecimal rounded(Length size, LengthUnit unit, int places) {
        return BigDecimal.valueOf(size.nanometres())
                .divide(BigDecimal.valueOf(unit.nanometres()), places, RoundingMode.HALF_UP);
    }

    private static Optional<Pad> pad(Length cup, PadSize.Tie tie) {
        return PadSize.forCup(cup, tie)
                .found()
                .map(pad -> new Pad(pad.toString(), pad.diameter().minus(cup)));
    }

    private static ThreadSizes sizes(Thread thread) {
        return new ThreadSizes(
                thread.designation(),
                thread.system().shown() + ", " + thread.series(),
                Length.ofMillimetres(thread.pitch().mm()),
                thread.pitchDiameter(),
                thread.minorInternal(),
                thread.provenance().source());
    }
}
