package hornbook.shared.stock;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.MemberState;
import hornbook.shared.shop.PersonCode;
import hornbook.shared.shop.ShopTool;
import hornbook.shared.shop.ToolMember;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.FreeId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Tools and the members of their sets: where they are, how far they are off, who has them. Each call is one deed that can
 * be undone.
 */
public final class ToolBook {
    private final Books books;
    private final Places places;
    private final Called called;

    public ToolBook(Books books) {
        this.books = books;
        this.places = new Places(books);
        this.called = new Called(books);
    }

    /** Lends a member to somebody, by a code and never a name. */
    public Deed lend(String set, String member, String toCode) {
        return change(set, member, MemberState.LENT, PersonCode.read(toCode));
    }

    /** It is in this state from today; GOOD where it came back. */
    public Deed state(String set, String member, MemberState state) {
        return change(set, member, state, null);
    }

    /** A tool that is new here. @param serves what it is for; may be empty */
    public Deed add(String title, String serves, String to) {
        if (title.isBlank()) {
            throw new BadInput("the tool has no name: say what it is");
        }
        Spot spot = places.spot(to);
        String id = FreeId.of(books, ShopTool.class, "tool-", title);
        return books.write(
                "a new tool: " + title.strip(),
                w -> w.put(new ShopTool(
                        id, title.strip(), spot.drawer(), spot.place(), serves.strip(), "good", "", null, "", "")));
    }

    /** A member that the set has from now on: a die, a drill. */
    public Deed addMember(String set, String kind, String member) {
        ShopTool tool = tool(set);
        ToolMember made = new ToolMember(set, kind.strip(), member.strip(), MemberState.GOOD, null, null, "");
        if (kind.isBlank() || member.isBlank()) {
            throw new BadInput("a member needs its kind and its size: say die and M3x0.5");
        }
        if (books.find(ToolMember.class, made.id()).isPresent()) {
            throw new BadInput(tool.title() + " has " + kind + " " + member + " already");
        }
        return books.write(tool.title() + " has a " + kind.strip() + " " + member.strip(), w -> w.put(made));
    }

    /** It lies elsewhere from now on. */
    public Deed put(String tool, String to) {
        ShopTool was = tool(tool);
        Spot spot = places.spot(to);
        return books.write(
                "put " + was.title() + " in " + called.spot(spot),
                w -> w.put(was.lyingIn(spot.drawer(), spot.place())));
    }

    /**
     * How far it is off, found today against a known piece.
     *
     * @param errorMm what it reads less what is true, mm
     * @param how against what it was checked
     */
    public Deed checked(String tool, String errorMm, String how) {
        ShopTool was = tool(tool);
        String error = errorMm.strip().replace(',', '.');
        if (!error.matches("[+-]?\\d(\\.\\d{1,6})?")) {
            throw new BadInput(
                    "“" + errorMm + "” is no error in mm: write what it reads less what is true, as +0.02 or -0.01");
        }
        return books.write(
                was.title() + " reads " + error + " mm off",
                w -> w.put(was.reading(error, books.today(), how.strip())));
    }

    private ShopTool tool(String id) {
        return books.find(ShopTool.class, id)
                .orElseThrow(() -> new BadInput("there is no tool " + id + ": see “hornbook tool”"));
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
        String of = books.find(ShopTool.class, set).map(ShopTool::title).orElse(set);
        String title =
                m.kind() + " " + m.member() + " of " + of + ": " + state.name().toLowerCase(java.util.Locale.ROOT);
        boolean good = state == MemberState.GOOD;
        return books.write(
                title,
                w -> w.put(new ToolMember(
                        m.set(), m.kind(), m.member(), state, lentTo, good ? null : books.today(), m.note())));
    }
}
