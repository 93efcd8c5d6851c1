package hornbook.indexer.card;

import org.jspecify.annotations.Nullable;

/**
 * What a hit shows besides its title.
 *
 * @param drawer id of the drawer or place it lies in, or is
 * @param label the drawer's label as written, or the place's name
 * @param where piece of furniture and spot in it
 * @param onHand count as written: a number, or few, some, plenty
 * @param day ISO day that orders it in time
 * @param remark what to know before going there
 * @param item id of the kind of thing a lot is of
 * @param heed whether stock may be taken, and a label trusted
 */
public record Shown(
        @Nullable String drawer,
        @Nullable String label,
        @Nullable String where,
        @Nullable String onHand,
        @Nullable String day,
        @Nullable String remark,
        @Nullable String item,
        Heed heed) {

    /** Whether stock may be taken. */
    public enum Heed {
        /** Take it. */
        OPEN,
        /** There is none. */
        NONE,
        /** Only on asking. */
        RESERVE,
        /** Never. */
        KEEPSAKE,
        /** A drawer whose label is no longer true. */
        MISLABELLED
    }

    /** Nothing more to show. */
    public static final Shown NOTHING = new Shown(null, null, null, null, null, null, null, Heed.OPEN);

    /** Shows a day only. */
    public static Shown on(@Nullable String day) {
        return new Shown(null, null, null, null, day, null, null, Heed.OPEN);
    }

    /** The same with another remark. */
    public Shown remarking(@Nullable String other) {
        return new Shown(drawer, label, where, onHand, day, other, item, heed);
    }
}
