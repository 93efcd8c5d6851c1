package hornbook.catalogue.estimate;

import org.hipparchus.linear.RealMatrix;

/**
 * Effects as the observations leave them.
 *
 * @param variances of each factor
 * @param rest variance of what no factor explains, at weight 1
 * @param effects of all factors but the last, one after the other
 * @param lastEffects of the last factor
 * @param covariance of {@code effects} given the observations
 */
record Effects(double[] variances, double rest, double[] effects, double[] lastEffects, RealMatrix covariance) {}
