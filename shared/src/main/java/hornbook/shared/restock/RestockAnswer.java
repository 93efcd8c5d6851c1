package hornbook.shared.restock;

import java.util.List;

/**
 * The list: what is to be ordered first, and of that empty places, then what is farthest under its point.
 *
 * @param remarks what is wrong with the books, a line each
 */
public record RestockAnswer(List<RestockLine> lines, List<String> remarks) {

    /** Lines to order. */
    public List<RestockLine> toOrder() {
        return lines.stream().filter(line -> line.order() > 0).toList();
    }

    /** Lines that ask for something before anything is ordered. */
    public List<RestockLine> toDoFirst() {
        return lines.stream().filter(line -> line.order() == 0).toList();
    }
}
