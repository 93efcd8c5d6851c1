package hornbook.shared.job;

import hornbook.shared.shop.Went;

/**
 * How a job ended.
 *
 * @param sentence what the next one should know
 * @param back whether the horn goes back to its owner at once
 */
public record Ended(Went went, String sentence, boolean back) {}
