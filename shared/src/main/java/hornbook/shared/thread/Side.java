package hornbook.shared.thread;

/** What was measured. */
public enum Side {
    /** A screw or rod end, over its crests. */
    SCREW,
    /** A hole, through its crests. */
    HOLE
}
