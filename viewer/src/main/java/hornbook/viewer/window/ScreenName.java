package hornbook.viewer.window;

/** The screens in the order of the rail. A screen keeps its number whether or not the others are there. */
public enum ScreenName {
    BENCH("Bench", Icons.BENCH),
    FIND("Find", Icons.FIND),
    DRAWERS("Drawers", Icons.DRAWERS),
    HORN_MAP("Horn map", Icons.HORN_MAP),
    JOBS("Jobs", Icons.JOBS),
    FIT("Fit & gauges", Icons.FIT),
    RESTOCK("Restock", Icons.RESTOCK),
    KNOWLEDGE("Knowledge", Icons.KNOWLEDGE),
    IN_OUT("In & out", Icons.IN_OUT);

    private final String title;
    private final String icon;

    ScreenName(String title, String icon) {
        this.title = title;
        this.icon = icon;
    }

    public String title() {
        return title;
    }

    /** Our own line drawing on a square of 24 by 24, as an SVG path to be stroked. */
    String icon() {
        return icon;
    }

    /** The digit that calls it together with Alt, 1 to 9. */
    public int digit() {
        return ordinal() + 1;
    }
}
