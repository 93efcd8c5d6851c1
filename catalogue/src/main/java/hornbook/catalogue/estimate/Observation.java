package hornbook.catalogue.estimate;

/**
 * One look at a sum of effects.
 *
 * @param value what was seen
 * @param weight one over the variance that is its own, in units of the rest
 * @param levels the level of each factor, -1 where the factor does not act
 */
record Observation(double value, double weight, int[] levels) {}
