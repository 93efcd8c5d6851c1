package hornbook.shared.exchange;

/**
 * One of the shop's own entries, as it stands on disk.
 *
 * @param path below the folder of entries: {@code model/m-….json}
 */
public record EntryFile(String path, String json) {}
