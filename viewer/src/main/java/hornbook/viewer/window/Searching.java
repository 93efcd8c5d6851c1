package hornbook.viewer.window;

/** The screen that answers what is typed into the search box. */
public interface Searching extends Screen {
    /** The box now holds this text. */
    void typed(String text);

    /** Moves the choice by so many rows. */
    void step(int rows);

    /** Opens what is chosen. */
    void open();

    /**
     * Pulls the drawer in which what is chosen lies.
     *
     * @param then the sign typed over the open drawer at once; empty for none
     */
    default void pull(String then) {}
}
