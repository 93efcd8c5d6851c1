package hornbook.indexer.card;

import hornbook.shared.shop.MemberState;
import hornbook.shared.shop.ShopTool;
import hornbook.shared.shop.ToolMember;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Adds to the card of a kind of tool what this shop knows of its own: where it is, and what of a set is missing. */
final class ToolCards {

    Draft add(Draft card, ShopTool tool, List<ToolMember> members, @Nullable Spot spot) {
        card.say(Field.NAME, tool.title())
                .say(Field.GIST, tool.serves())
                .say(Field.TEXT, tool.note())
                .say(Field.TEXT, tool.errorNote());
        members.forEach(member -> card.size(member.member()));
        if (spot != null) {
            card.say(Field.LABEL, spot.label());
        }
        return card.shown(shown(tool, members, spot));
    }

    private static Shown shown(ShopTool tool, List<ToolMember> members, @Nullable Spot spot) {
        String lies = tool.drawer() != null ? tool.drawer() : tool.place();
        return new Shown(
                lies,
                spot == null ? null : spot.label(),
                spot == null ? null : spot.where(),
                null,
                null,
                remark(tool, members, spot),
                null,
                Shown.Heed.OPEN);
    }

    private static @Nullable String remark(ShopTool tool, List<ToolMember> members, @Nullable Spot spot) {
        List<String> remarks = new ArrayList<>();
        if (!tool.state().isEmpty() && !tool.state().equals("good")) {
            remarks.add(tool.state());
        }
        for (ToolMember member : members) {
            if (member.state() == MemberState.LENT) {
                remarks.add(member.kind() + " " + member.member() + " is lent to " + member.lentTo());
            } else if (member.state() == MemberState.MISSING) {
                remarks.add(member.kind() + " " + member.member() + " is missing");
            }
        }
        if (spot != null && spot.remark() != null) {
            remarks.add(spot.remark());
        }
        return remarks.isEmpty() ? null : String.join("; ", remarks);
    }
}
