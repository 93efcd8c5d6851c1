package hornbook.indexer.index;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * What a commit of the index says of itself.
 *
 * @param version of the index's shape: another one is not read
 * @param feed last line of the change feed that is in it
 * @param line what that line said, so that books put back from a copy are noticed
 * @param entries digest of the shipped and own entries
 * @param at when it was written
 */
record Stamp(int version, long feed, String line, String entries, Instant at) {
    /** Raise it whenever the same records would give other documents. */
    static final int VERSION = 4;

    Map<String, String> written() {
        return Map.of(
                "version", Integer.toString(version),
                "feed", Long.toString(feed),
                "line", line,
                "entries", entries,
                "at", at.toString());
    }

    /** The stamp of a commit, if it is of this version. */
    static Optional<Stamp> read(Map<String, String> data) {
        if (!Integer.toString(VERSION).equals(data.get("version"))) {
            return Optional.empty();
        }
        return Optional.of(new Stamp(
                VERSION,
                Long.parseLong(data.getOrDefault("feed", "-1")),
                data.getOrDefault("line", ""),
                data.getOrDefault("entries", ""),
                Instant.parse(data.getOrDefault("at", Instant.EPOCH.toString()))));
    }
}
