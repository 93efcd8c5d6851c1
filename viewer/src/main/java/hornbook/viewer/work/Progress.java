package hornbook.viewer.work;

import java.util.concurrent.CancellationException;

/** How work in hand tells how far it is, and learns that nobody wants it any more. */
public interface Progress {
    /**
     * @param done units done
     * @param total units in all; 0 where that is not known
     * @param doing what is being done, for a person to read
     */
    void reached(long done, long total, String doing);

    boolean cancelled();

    /** Ends the work where it was cancelled. Long work calls this at each place where it may stop unharmed. */
    default void stopIfCancelled() {
        if (cancelled()) {
            throw new CancellationException();
        }
    }
}
