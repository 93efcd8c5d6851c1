package hornbook.catalogue.entry;

import org.jspecify.annotations.Nullable;

/**
 * One cause of a symptom.
 *
 * @param id unique among all causes
 * @param share share of the cases this cause makes, among the fault's own
 * @param check what settles it: yes means it is this
 * @param checkMinutes bench minutes of the check, without its set-up
 * @param setUp set-up the check needs, which checks can share
 * @param setUpMinutes bench minutes to make that set-up; 0 without one
 * @param fault the fault it is in its own right
 */
public record Cause(
        String id,
        String text,
        double share,
        String check,
        double checkMinutes,
        @Nullable String setUp,
        double setUpMinutes,
        @Nullable String fault) {

    static Cause from(Fields in) {
        return new Cause(
                in.text("id"),
                in.text("text"),
                in.number("share"),
                in.text("check"),
                in.number("check_minutes"),
                in.optionalText("set_up"),
                in.number("set_up_minutes"),
                in.optionalText("fault"));
    }
}
