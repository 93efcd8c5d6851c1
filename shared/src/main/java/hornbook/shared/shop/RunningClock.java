package hornbook.shared.shop;

import java.time.LocalDateTime;

/** A clock that runs: who works on what since when. It survives a crash; what was forgotten is asked about. */
public record RunningClock(String id, String job, String task, int count, LocalDateTime since, String who)
        implements ShopRecord {}
