package hornbook.viewer.hand;

import hornbook.shared.stock.DrawerCard;
import hornbook.shared.stock.OpenJob;
import java.util.List;

/**
 * An opened drawer or place with what one needs at hand to work on it.
 *
 * @param jobs what parts may be taken for
 */
public record Opened(DrawerCard card, List<OpenJob> jobs) {}
