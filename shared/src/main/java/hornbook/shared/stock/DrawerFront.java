package hornbook.shared.stock;

import hornbook.shared.shop.LabelState;
import org.jspecify.annotations.Nullable;

/**
 * A drawer as it shows from outside, with what one should know before pulling it.
 *
 * @param row from 1, at the top
 * @param column from 1, at the left
 * @param label as written; empty where it has none
 * @param contents as found when it was last looked through
 * @param lots how many lots lie in it
 * @param empty whether there is nothing in it: no tool, and every lot used up, or none entered and found empty
 * @param unsure whether it was not looked through for so long that its contents are not to be trusted
 * @param heed what is wrong with it, in a sentence
 */
public record DrawerFront(
        String id,
        int row,
        int column,
        String label,
        String contents,
        LabelState labelState,
        int lots,
        boolean empty,
        boolean unsure,
        @Nullable String heed) {}
