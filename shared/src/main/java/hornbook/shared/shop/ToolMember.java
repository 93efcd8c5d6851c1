package hornbook.shared.shop;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A member of a set of tools: a tap, a die, a drill, by designation or size as written. */
public record ToolMember(
        String set,
        String kind,
        String member,
        MemberState state,
        @Nullable String lentTo,
        @Nullable LocalDate since,
        String note)
        implements ShopRecord {
    @Override
    public String id() {
        return set + "/" + kind + "/" + member;
    }
}
