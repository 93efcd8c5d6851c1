package hornbook.viewer.window;

/** The colours of the window. */
public enum Look {
    /** As the system has it. */
    SYSTEM("as the system"),
    LIGHT("light"),
    DARK("dark"),
    CONTRAST("high contrast");

    private final String title;

    Look(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }

    Look next() {
        return values()[(ordinal() + 1) % values().length];
    }
}
