package hornbook.shared.shop;

import java.time.LocalDateTime;

/** Something that soaks, dries or sets, and when it is ready. */
public record Timer(String id, String job, String what, LocalDateTime since, LocalDateTime ready)
        implements ShopRecord {}
