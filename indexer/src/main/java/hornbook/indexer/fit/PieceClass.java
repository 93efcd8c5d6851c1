package hornbook.indexer.fit;

/** What is spoilt when a piece is worked for good; charges in minutes (parts-and-supplies, from memory). */
enum PieceClass {
    /** Stock to be worked, a supply, or the customer's own. */
    BLANK("blank", 0),
    /** Salvaged, of no make. */
    SALVAGED_COMMON("salvaged", 2),
    /** New, of no make. */
    NEW_COMMON("new", 4),
    /** Salvaged, and it names makes or models. */
    SALVAGED_MAKE("salvaged, make-specific", 8),
    /** New, and it names makes or models. */
    NEW_MAKE("new, make-specific", 12);

    private final String words;
    private final double charge;

    PieceClass(String words, double charge) {
        this.words = words;
        this.charge = charge;
    }

    /** Minutes, per piece. */
    double charge() {
        return charge;
    }

    String words() {
        return words;
    }

    boolean makeSpecific() {
        return this == SALVAGED_MAKE || this == NEW_MAKE;
    }

    boolean salvaged() {
        return this == SALVAGED_COMMON || this == SALVAGED_MAKE;
    }
}
