package hornbook.shared.shop;

/** Why stock moved. */
public enum MovementKind {
    OPENING,
    RECEIPT,
    SALVAGE,
    USE,
    CORRECTION
}
