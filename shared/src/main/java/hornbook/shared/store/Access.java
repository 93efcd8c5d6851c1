package hornbook.shared.store;

/** How a shop is opened. */
public enum Access {
    /** Makes the shop where there is none; the only writer, or refused. */
    WRITE,
    /** Never takes the lock, never makes anything. */
    READ,
    /** As writer if nobody else is, else to read. */
    WRITE_IF_FREE
}
