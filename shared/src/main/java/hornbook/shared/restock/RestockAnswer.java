package hornbook.shared.restock;

import java.util.List;

/**
 * The list, what is most pressing first: empty places, then by how far under the point.
 *
 * @param remarks what is wrong with the books, a line each
 */
public record RestockAnswer(List<RestockLine> lines, List<String> remarks) {}
