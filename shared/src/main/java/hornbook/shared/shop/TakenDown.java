package hornbook.shared.shop;

/** A step of taking a horn down, as it went. */
public record TakenDown(String id, String job, int step, String piece, String how, String reason)
        implements ShopRecord {}
