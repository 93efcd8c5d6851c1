package hornbook.shared.pads;

/**
 * A cup as the sweep sees it.
 *
 * @param ruled half millimetres
 * @param off diameter less ruled size, micrometres
 */
record Seat(int ruled, int off) {}
