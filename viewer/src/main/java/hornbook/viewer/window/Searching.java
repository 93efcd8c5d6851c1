package hornbook.viewer.window;

/** The screen that answers what is typed into the search box. */
public interface Searching extends Screen {
    /** The box now holds this text. */
    void typed(String text);

    /** Moves the choice by so many rows. */
    void step(int rows);

    /** Opens what is chosen. */
    void open();
}
