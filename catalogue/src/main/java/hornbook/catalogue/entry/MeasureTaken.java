package hornbook.catalogue.entry;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A kind of finding with its usual range.
 *
 * @param usual by instrument
 * @param outlierMeans what a reading outside suggests
 * @param how how it is taken
 * @param consent what it does to the horn that needs the owner's yes
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record MeasureTaken(
        String id,
        String title,
        FindingKind kind,
        @Nullable String unit,
        Map<String, Usual> usual,
        String outlierMeans,
        String how,
        @Nullable String consent,
        String source,
        String sureness)
        implements Entry {

    /** Keeps its own copies. */
    public MeasureTaken {
        usual = Ordered.copy(usual);
    }

    static MeasureTaken from(Fields in) {
        return new MeasureTaken(
                in.text("id"),
                in.text("title"),
                in.word("kind", FindingKind.values()),
                in.optionalText("unit"),
                in.byName("usual", Usual::from),
                in.text("outlier_means"),
                in.text("how"),
                in.optionalText("consent"),
                in.text("source"),
                in.text("sureness"));
    }
}
