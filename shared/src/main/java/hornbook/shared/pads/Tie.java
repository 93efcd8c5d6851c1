package hornbook.shared.pads;

/** Where a cup exactly between two sizes goes: up suits felt and leather, down stiff pads and rings (common practice). */
public enum Tie {
    UP,
    DOWN
}
