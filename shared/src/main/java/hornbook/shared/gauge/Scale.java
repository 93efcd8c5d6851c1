package hornbook.shared.gauge;

import hornbook.shared.gauge.GaugeAnswer.Neighbours;
import hornbook.shared.measure.Length;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A series of names, each with its size, in any order. */
record Scale(String series, List<Mark> marks) {
    /** Two sizes nearer than this are one: no gauge in a shop parts them. */
    private static final Length SAME = Length.ofMillimetres("0.001");

    Scale {
        marks = List.copyOf(marks);
    }

    Neighbours around(Length asked) {
        Comparator<Mark> bySize = Comparator.comparing(Mark::size);
        return new Neighbours(
                series,
                side(asked, -1).max(bySize).map(mark -> mark.near(asked)),
                side(asked, 0)
                        .min(Comparator.comparing(
                                mark -> mark.size().minus(asked).abs()))
                        .map(mark -> mark.near(asked)),
                side(asked, 1).min(bySize).map(mark -> mark.near(asked)));
    }

    Stream<Mark> between(Length low, Length high) {
        return marks.stream()
                .filter(mark -> mark.size().compareTo(low) >= 0 && mark.size().compareTo(high) <= 0)
                .sorted(Comparator.comparing(Mark::size));
    }

    /** The marks below (-1), at (0) or above (1) a size. */
    private Stream<Mark> side(Length asked, int side) {
        return marks.stream().filter(mark -> {
            Length off = mark.size().minus(asked);
            return (off.abs().compareTo(SAME) <= 0 ? 0 : Long.signum(off.nanometres())) == side;
        });
    }
}
