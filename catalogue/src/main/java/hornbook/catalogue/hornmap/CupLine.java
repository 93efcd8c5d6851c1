package hornbook.catalogue.hornmap;

import hornbook.catalogue.entry.Span;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is known of one cup of a horn.
 *
 * @param cup its id
 * @param rest open or closed, when nobody touches its key
 * @param pad size of the pad that is in it, or that its model has
 * @param inside its inside diameter
 * @param found opening at its front as found
 * @param left opening as left
 * @param modelHeight opening its model has, mm
 * @param usualHeight what is usual on the instrument, mm
 * @param usualPad what is usual on the instrument, mm
 * @param findings what was seen at it, the newest first
 * @param key what its key turns on, its spring, its rim
 * @param remarks what is out of the usual, each a sentence
 */
public record CupLine(
        String cup,
        String title,
        String rest,
        @Nullable Size pad,
        @Nullable Size inside,
        @Nullable Size found,
        @Nullable Size left,
        @Nullable Double modelHeight,
        @Nullable Span usualHeight,
        @Nullable Span usualPad,
        List<Note> findings,
        List<KeyMeasure> key,
        List<String> remarks) {
    /** Keeps its own copies. */
    public CupLine {
        findings = List.copyOf(findings);
        key = List.copyOf(key);
        remarks = List.copyOf(remarks);
    }

    /**
     * A size, mm.
     *
     * @param from the job it was read on, or {@code model} where this horn was not measured
     */
    public record Size(double mm, String from) {
        /** Was it read on this horn? */
        public boolean own() {
            return !from.equals(MODEL);
        }
    }

    static final String MODEL = "model";

    /** A finding at a cup, as read. */
    public record Note(LocalDate day, String job, String title, String value, String unit, String note) {}

    /**
     * A measure of its key.
     *
     * @param field as {@code job key} names it
     * @param from as in {@link Size}
     */
    public record KeyMeasure(String field, String title, String value, String from) {}
}
