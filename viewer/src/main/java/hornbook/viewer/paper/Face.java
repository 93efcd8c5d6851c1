package hornbook.viewer.paper;

/** The cuts of type that go with the program. */
public enum Face {
    /** Every sign of the trade, also sharps and flats. */
    SIGNS("DejaVuSans.ttf"),
    /** Narrower, for what must stand on little room. */
    PLAIN("Inter-Regular.ttf"),
    BOLD("Inter-Bold.ttf");

    private final String file;

    Face(String file) {
        this.file = file;
    }

    /** Where it lies in the program. */
    public String resource() {
        return "/hornbook/viewer/window/fonts/" + file;
    }
}
