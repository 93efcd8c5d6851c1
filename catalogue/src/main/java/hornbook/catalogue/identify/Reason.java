package hornbook.catalogue.identify;

/**
 * What one answer did to a candidate.
 *
 * @param answer as written
 * @param logOdds natural logarithm of the odds it added, all other answers given; below 0 it speaks against
 */
public record Reason(String answer, double logOdds) {}
