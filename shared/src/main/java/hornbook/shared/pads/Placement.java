package hornbook.shared.pads;

import java.util.List;

/**
 * Cups that are to be filled from one tray.
 *
 * @param cups their numbers
 * @param tray its number, or {@link #NONE}: they stay empty
 * @param alone what these cups would be worth with the tray to themselves: others can only make it worse
 */
record Placement(List<Integer> cups, int tray, Score alone) {
    static final int NONE = -1;
}
