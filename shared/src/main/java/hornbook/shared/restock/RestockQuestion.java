package hornbook.shared.restock;

import java.util.List;
import java.util.Map;

/**
 * What the list is reckoned from beside the books.
 *
 * @param wanted known demand of taken-in and booked jobs
 * @param keepsMonths how long goods keep, months by item; items not in it keep
 */
public record RestockQuestion(List<Wanted> wanted, Map<String, Integer> keepsMonths) {
    /** The books alone. */
    public static final RestockQuestion BOOKS_ALONE = new RestockQuestion(List.of(), Map.of());
}
