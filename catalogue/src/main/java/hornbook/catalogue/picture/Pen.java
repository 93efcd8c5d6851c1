package hornbook.catalogue.picture;

import java.util.Arrays;
import java.util.Optional;

/** How a shape is drawn; the caller's style sheet gives each its colours. Widths are in picture units. */
public enum Pen {
    /** Main pen, 2.5 wide, not filled. */
    LINE("line"),
    /** Second pen, 1.3 wide, not filled. */
    THIN("thin"),
    /** Hatching of cut metal and sheen, 0.8 wide, not filled. */
    HATCH("hatch"),
    /** Metal, or what the part belongs to: main pen, metal tint. */
    BODY("body"),
    /** Covers what lies behind: main pen, filled with the ground. */
    PAPER("paper"),
    /** Lumps and small holes: filled with ink, no outline. */
    INK("ink"),
    /** A part that is itself black: main pen, near black in every scheme, also on a dark ground. */
    DARK("dark"),
    /** The part that matters: accent, 3 wide, not filled. */
    PART("part"),
    /** The part that matters, as an area: accent 2.5 wide, accent tint. */
    PART_FILL("part-fill"),
    /** For comparison, or where something would be: dashed, faint, not filled. */
    GHOST("ghost");

    private final String word;

    Pen(String word) {
        this.word = word;
    }

    /** The style class as written in the files. */
    public String word() {
        return word;
    }

    static Optional<Pen> of(String word) {
        return Arrays.stream(values()).filter(p -> p.word.equals(word)).findFirst();
    }
}
