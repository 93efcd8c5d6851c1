package hornbook.shared.exchange;

import java.util.List;

/**
 * What an import did.
 *
 * @param read rows read
 * @param taken rows taken, those that stood in the books already included
 * @param remarks what was taken although it may be a slip
 */
public record ImportReport(int read, int taken, List<Refusal> refused, List<String> remarks) {}
