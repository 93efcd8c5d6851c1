package hornbook.shared.shop;

import java.time.LocalDate;

/** Minutes clocked on a task, for the whole count; a task clocked on two days has parts 1/2 and 2/2. */
public record TaskTime(
        String id, String job, String task, int count, String part, LocalDate date, int minutes, String who)
        implements ShopRecord {}
