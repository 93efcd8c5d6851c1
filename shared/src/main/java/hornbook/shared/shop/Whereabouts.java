package hornbook.shared.shop;

import java.time.LocalDate;

/** Where a horn or a piece of it is, and what it waits for. */
public record Whereabouts(String id, String job, String piece, String where, String waitsFor, LocalDate since)
        implements ShopRecord {}
