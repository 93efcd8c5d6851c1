package hornbook.shared.stock;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.MemberState;
import hornbook.shared.shop.ToolMember;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Members of sets of tools: lent, back, broken, missing. Each call is one deed that can be undone. */
public final class ToolBook {
    private final Books books;

    public ToolBook(Books books) {
        this.books = books;
    }

    /** Lends a member to somebody, by a code and never a name. */
    public Deed lend(String set, String member, String toCode) {
        return change(set, member, MemberState.LENT, toCode);
    }

    /** It is in this state from today; GOOD where it came back. */
    public Deed state(String set, String member, MemberState state) {
        return change(set, member, state, null);
    }

    private Deed change(String set, String member, MemberState state, @Nullable String lentTo) {
        List<ToolMember> found = books.where(ToolMember.class, "set", set).stream()
                .filter(m -> m.member().equalsIgnoreCase(member) || m.id().equals(member))
                .toList();
        if (found.size() != 1) {
            throw new BadInput(
                    found.isEmpty()
                            ? set + " has no member “" + member + "”: see “hornbook find " + set + "”"
                            : set + " has several members “" + member + "”: name it as set/kind/member");
        }
        ToolMember m = found.getFirst();
        String title = member + " of " + set + ": " + state.name().toLowerCase(java.util.Locale.ROOT);
        boolean good = state == MemberState.GOOD;
        return books.write(
                title,
                w -> w.put(new ToolMember(
                        m.set(), m.kind(), m.member(), state, lentTo, good ? null : books.today(), m.note())));
    }
}
