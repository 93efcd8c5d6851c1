package hornbook.shared.job;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How a job stands at this moment: what is worked on, where its horn and pieces are, what soaks or dries.
 *
 * <p>Two are equal where the same is running, lying and soaking: the moment does not count, so that what looks alike is
 * not drawn anew.
 *
 * @param asOf the moment, by the shop's clock
 */
public record Standing(LocalDateTime asOf, List<Clock> clocks, List<Piece> pieces, List<Soaking> timers) {
    /** Keeps its own copies. */
    public Standing {
        clocks = List.copyOf(clocks);
        pieces = List.copyOf(pieces);
        timers = List.copyOf(timers);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Standing that
                && clocks.equals(that.clocks)
                && pieces.equals(that.pieces)
                && timers.equals(that.timers);
    }

    @Override
    public int hashCode() {
        return Objects.hash(clocks, pieces, timers);
    }

    /**
     * A clock that runs.
     *
     * @param forgotten has it run longer than anyone works without a break; then its minutes are not believed
     */
    public record Clock(String task, int count, LocalDateTime since, String who, boolean forgotten) {}

    /** Where the horn or a piece of it is, and what it waits for; that may be empty. */
    public record Piece(String piece, String where, String waitsFor, LocalDate since) {}

    /** Something that soaks, dries or sets. */
    public record Soaking(String id, String what, LocalDateTime since, LocalDateTime ready) {}
}
