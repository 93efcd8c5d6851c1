package hornbook.shared.measure;

/**
 * How large a good screw and a good hole of one thread may be.
 *
 * @param fit class of fit: {@code 6g/6H}, {@code 2A/2B}, {@code BS 93 normal} …
 * @param screwMajor over the crests of the screw
 * @param screwPitch effective diameter of the screw
 * @param holeMinor through the crests of the hole
 * @param holePitch effective diameter of the hole
 */
public record ThreadLimits(
        String designation,
        String fit,
        Limits screwMajor,
        Limits screwPitch,
        Limits holeMinor,
        Limits holePitch,
        Provenance provenance) {}
