package hornbook.shared.stock;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A tool of the shop: where it is, what it is for, how far it can be trusted.
 *
 * @param lies id of its drawer or place; absent where nobody knows
 * @param label of that drawer as written, or the place's name
 * @param errorMm what the gauge reads less what is true, mm, as written; empty where it does not measure
 * @param members of a set; none where it is a single tool
 */
public record ToolCard(
        String id,
        String title,
        @Nullable String lies,
        String label,
        String where,
        String serves,
        String state,
        String errorMm,
        @Nullable LocalDate errorChecked,
        String note,
        List<MemberLine> members) {

    /** The members that are not there, or not fit for use. */
    public List<MemberLine> wanting() {
        return members.stream().filter(member -> !member.good()).toList();
    }
}
