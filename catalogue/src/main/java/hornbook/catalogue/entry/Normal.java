package hornbook.catalogue.entry;

/**
 * A measurement over horns of one model.
 *
 * @param mean mm
 * @param sd standard deviation from horn to horn, mm
 */
public record Normal(double mean, double sd) implements Distribution {}
