package hornbook.shared.shop;

/** How a job went. */
public enum Went {
    SMOOTH,
    FAIR,
    ROUGH
}
