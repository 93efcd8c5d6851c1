package hornbook.shared.shop;

/** Where a job stands. */
public enum JobStatus {
    OPEN,
    WAITING,
    DONE,
    DECLINED;

    /** Is its horn still to be worked on? */
    public boolean onBench() {
        return this == OPEN || this == WAITING;
    }
}
