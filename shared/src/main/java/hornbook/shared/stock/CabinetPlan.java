package hornbook.shared.stock;

import java.util.List;

/**
 * A cabinet as one stands before it.
 *
 * @param where where it stands
 * @param drawers by row and column, each counted from 1; a spot without a drawer is missing
 */
public record CabinetPlan(
        String id, String name, String where, String notes, int rows, int columns, List<DrawerFront> drawers) {}
