package hornbook.shared.stock;

/**
 * A job that parts may be taken for.
 *
 * @param what whose horn it is, in few words: the name it was sold under, its voice, the complaint
 * @param clockRuns whether somebody is at work on it now
 */
public record OpenJob(String id, String what, boolean clockRuns) {}
