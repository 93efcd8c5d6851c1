package hornbook.indexer.brief;

import hornbook.catalogue.identify.Question;

/**
 * A brief for a horn.
 *
 * @param horn what is known of it
 * @param reserve whether what is set aside may be offered
 */
public record BriefQuestion(Question horn, boolean reserve) {
    /** The reserve left alone. */
    public static BriefQuestion of(Question horn) {
        return new BriefQuestion(horn, false);
    }
}
