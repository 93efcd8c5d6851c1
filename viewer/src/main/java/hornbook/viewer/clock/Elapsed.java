package hornbook.viewer.clock;

import hornbook.shared.job.OnBench;
import hornbook.shared.job.Standing;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;

/** How long a clock has run and how long something still soaks, in words; ticks on between two askings. */
public final class Elapsed {
    private final Duration ahead;

    private Elapsed(Duration ahead) {
        this.ahead = ahead;
    }

    /** From this moment on, at which the bench was asked: the shop's day need not be the machine's. */
    public static Elapsed of(List<OnBench> bench) {
        LocalDateTime here = LocalDateTime.now(ZoneId.systemDefault());
        return new Elapsed(
                bench.isEmpty()
                        ? Duration.ZERO
                        : Duration.between(here, bench.getFirst().standing().asOf()));
    }

    private LocalDateTime now() {
        return LocalDateTime.now(ZoneId.systemDefault()).plus(ahead);
    }

    public String of(Standing.Clock clock) {
        return clock.forgotten() ? "forgotten?" : words(Duration.between(clock.since(), now()));
    }

    public String of(Standing.Soaking soaking) {
        Duration left = Duration.between(now(), soaking.ready());
        return left.isPositive() ? "ready in " + words(left.plusSeconds(59)) : "READY";
    }

    public boolean ready(Standing.Soaking soaking) {
        return !soaking.ready().isAfter(now());
    }

    static String words(Duration time) {
        long minutes = Math.max(0, time.toMinutes());
        return minutes < 60 ? minutes + " min" : "%d h %02d".formatted(minutes / 60, minutes % 60);
    }
}
