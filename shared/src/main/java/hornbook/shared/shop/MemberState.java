package hornbook.shared.shop;

/** What a member of a set is good for. */
public enum MemberState {
    GOOD,
    WORN,
    STUB,
    GALLED,
    CHIPPED,
    BROKEN,
    MISSING,
    LENT
}
