package hornbook.viewer.window;

/** Our own line drawings on a square of 24 by 24, as SVG paths to be stroked. */
final class Icons {
    /** A horn laid across two pegs on a bench. */
    static final String BENCH = "M2 15 H22 M5 15 V21 M19 15 V21 M8 15 V10 M15 15 V10 M3 8 H14 L21 4 V12 L14 10 H3 Z";
    /** A lens. */
    static final String FIND = "M10 3 a7 7 0 1 0 0.01 0 Z M15 15 L21 21";
    /** Four drawers with their pulls. */
    static final String DRAWERS = "M3 3 H21 V21 H3 Z M3 12 H21 M12 3 V21 M6 8 H9 M15 8 H18 M6 17 H9 M15 17 H18";
    /** Crook, body, bow and bell, with three cups. */
    static final String HORN_MAP = "M3 5 C6 2 9 3 9 7 V17 C9 22 18 22 18 16 V12 L21 8 M14 11 L18 12"
            + " M13 6 a1 1 0 1 0 0.01 0 Z M13 10 a1 1 0 1 0 0.01 0 Z M13 14 a1 1 0 1 0 0.01 0 Z";
    /** A clock. */
    static final String JOBS = "M12 3 a9 9 0 1 0 0.01 0 Z M12 7 V12 L16 14";
    /** A sliding gauge with its two jaws. */
    static final String FIT = "M2 4 H22 V8 H2 Z M4 8 V20 L8 15 V8 M12 8 V15 L16 20 V8 M19 6 V8 M16 6 V8";
    /** Goods into a tray. */
    static final String RESTOCK = "M3 13 V21 H21 V13 M12 2 V15 M7 10 L12 15 L17 10";
    /** An open book. */
    static final String KNOWLEDGE =
            "M12 6 C9 4 6 4 3 5 V19 C6 18 9 18 12 20 C15 18 18 18 21 19 V5 C18 4 15 4 12 6 Z M12 6 V20";
    /** One sheet with an arrow in and an arrow out. */
    static final String IN_OUT = "M8 3 H16 V21 H8 Z M2 8 H11 M8 5 L11 8 L8 11 M13 16 H22 M19 13 L22 16 L19 19";
    /** Light falling on one half. */
    static final String LOOK = "M12 3 a9 9 0 1 0 0.01 0 Z M12 3 V21 M12 8 H20 M12 12 H21 M12 16 H20";

    private Icons() {}
}
