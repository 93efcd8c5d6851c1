package hornbook.shared.restock;

import java.util.List;

/**
 * The list: what is to be ordered first, and of that empty places, then what is farthest under its point.
 *
 * @param remarks what is wrong with the books, a line each
 */
public record RestockAnswer(List<RestockLine> lines, List<String> remarks) {}
