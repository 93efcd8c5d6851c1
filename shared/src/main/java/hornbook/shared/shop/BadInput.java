package hornbook.shared.shop;

/** What was asked or handed in cannot be used. The message is one line: what, where, what to do. */
public final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1;

    public BadInput(String message) {
        super(message);
    }
}
