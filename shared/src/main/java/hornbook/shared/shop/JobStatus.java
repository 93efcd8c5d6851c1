package hornbook.shared.shop;

/** Where a job stands. */
public enum JobStatus {
    OPEN,
    WAITING,
    DONE,
    DECLINED
}
