package hornbook.shared.shop;

import java.time.LocalDate;

/** The owner's yes to something that cannot be undone or leaves a mark: which, who said it, when. */
public record Consent(String id, String job, LocalDate day, String what, String saidBy, String note)
        implements ShopRecord {}
