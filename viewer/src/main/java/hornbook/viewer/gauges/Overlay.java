package hornbook.viewer.gauges;

/**
 * A screw in the hole of a thread that looks like its own.
 *
 * @param screwName the screw's designation
 * @param holeName the hole's
 * @param bindsAfterTurns turns until it jams
 */
record Overlay(String screwName, Profile screw, String holeName, Profile hole, double bindsAfterTurns) {}
