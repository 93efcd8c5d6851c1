package hornbook.shared.measure;

import java.util.List;

/** A size that can be searched for: a plain length, or a thread. */
public sealed interface Size {
    /**
     * Half a hundredth of a millimetre, the rounding of a length written to two places: 2.74 mm finds .108 in (2.7432
     * mm) and not 2.75 mm stock.
     */
    Length TOLERANCE = new Length(5_000);

    /** A length, drill or gauge; a drill is its diameter. */
    record Plain(Measured measured) implements Size {}

    /** The threads a writing may mean; mostly one. */
    record OfThread(List<Thread> meanings) implements Size {
        public OfThread {
            meanings = List.copyOf(meanings);
        }
    }

    /** Whether two sizes are one within {@link #TOLERANCE}. */
    default boolean same(Size other) {
        return same(other, TOLERANCE);
    }

    /**
     * Whether two sizes are one: lengths no further apart than {@code tolerance} (a range or a doubt counts from its
     * nearer end), threads only if both can be the same designation. A thread is never a length: M3 is no 3 mm rod.
     */
    default boolean same(Size other, Length tolerance) {
        return switch (this) {
            case Plain(Measured mine) -> other instanceof Plain(Measured theirs) && mine.meets(theirs, tolerance);
            case OfThread(List<Thread> mine) ->
                other instanceof OfThread(List<Thread> theirs)
                        && mine.stream()
                                .anyMatch(one -> theirs.stream()
                                        .anyMatch(two -> one.designation().equals(two.designation())));
        };
    }
}
