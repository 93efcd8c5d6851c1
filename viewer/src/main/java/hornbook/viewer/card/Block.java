package hornbook.viewer.card;

import hornbook.catalogue.picture.Picture;
import hornbook.shared.stock.LotLine;
import java.util.List;
import java.util.Optional;

/** A piece of a card. */
public sealed interface Block {
    /** Words under a heading; an empty heading for the first words of a card. */
    record Text(String heading, String words) implements Block {}

    /**
     * What must not be overlooked.
     *
     * @param stop whether harm follows, and not only trouble
     */
    record Heed(String words, boolean stop) implements Block {}

    /**
     * Where it lies.
     *
     * @param drawer id of the drawer or place
     * @param label as written on it
     * @param count how many are there, as written; empty where that is no question
     */
    record Lies(String drawer, String label, String where, String count) implements Block {}

    /** What lies in a drawer. */
    record Lots(List<LotLine> lots) implements Block {}

    /** Other records that belong to this one. */
    record Links(String heading, List<Link> links) implements Block {}

    /**
     * What a trait can be, with drawings where there are some.
     *
     * @param look where on the horn to look
     */
    record Drawn(Optional<Picture> look, List<Seen> values) implements Block {}

    /**
     * One thing that can be seen.
     *
     * @param name in a word or two
     * @param words what is to be seen
     */
    record Seen(String name, String words, Optional<Picture> picture) {}

    /**
     * The way to another record.
     *
     * @param note what is to be said about it here; may be empty
     */
    record Link(String kind, String id, String title, String note) {}
}
