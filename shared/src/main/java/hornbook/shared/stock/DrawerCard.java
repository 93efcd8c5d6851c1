package hornbook.shared.stock;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A drawer or another place with what is in it.
 *
 * @param where the piece of furniture and the spot in it, or where the place is
 * @param label as written on the drawer, empty where it has none; another place's name
 * @param contents as found when it was last looked through
 * @param heed what is wrong with it, in a sentence: label against contents, long not looked through
 * @param outOfUse lots that lay here when they were put out of use
 */
public record DrawerCard(
        String id,
        String where,
        String label,
        String contents,
        @Nullable String labelState,
        @Nullable LocalDate lastLookedThrough,
        String note,
        @Nullable String heed,
        List<LotLine> lots,
        List<ToolLine> tools,
        List<LotLine> outOfUse) {}
