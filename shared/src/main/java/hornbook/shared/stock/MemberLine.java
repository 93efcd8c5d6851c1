package hornbook.shared.stock;

import hornbook.shared.shop.ToolMember;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A member of a set of tools: a tap, a die, a drill.
 *
 * @param id set, kind and member as one name
 * @param member its designation or size as written
 * @param state good, stub, missing, lent, …
 * @param lentTo a code, where it is lent
 * @param since the day of its state, where it is not good
 */
public record MemberLine(
        String id,
        String kind,
        String member,
        String state,
        @Nullable String lentTo,
        @Nullable LocalDate since,
        String note) {

    static MemberLine of(ToolMember member) {
        return new MemberLine(
                member.id(),
                member.kind(),
                member.member(),
                member.state().name().toLowerCase(Locale.ROOT),
                member.lentTo(),
                member.since(),
                member.note());
    }

    /** Is it there and fit for use? */
    public boolean good() {
        return state.equals("good");
    }
}
