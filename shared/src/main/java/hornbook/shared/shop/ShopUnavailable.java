package hornbook.shared.shop;

/** The shop is missing, damaged, or held by another. The message is one line: what, where, what to do. */
public final class ShopUnavailable extends RuntimeException {
    private static final long serialVersionUID = 1;

    public ShopUnavailable(String message) {
        super(message);
    }

    public ShopUnavailable(String message, Throwable cause) {
        super(message, cause);
    }
}
