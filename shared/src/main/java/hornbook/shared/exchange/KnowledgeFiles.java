package hornbook.shared.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The shop's own knowledge as exchange files: read and written by the catalogue, which alone knows what they mean. */
public interface KnowledgeFiles {

    /**
     * What was read: entries to keep, rows refused, and how many rows there were.
     *
     * @param order ids in the order in which each file speaks of them, by file name
     */
    record Incoming(
            int read,
            List<EntryFile> entries,
            List<Refusal> refused,
            List<String> remarks,
            Map<String, List<String>> order) {}

    /** Names of the files it reads and writes. */
    List<String> names();

    /** Reads those of its files that stand in the folder; never throws for what is in them. */
    Incoming read(Path folder);

    /**
     * Writes all of its files into the folder.
     *
     * @param order as it was read; what it does not name comes last
     */
    void write(Path folder, Map<String, List<String>> order) throws IOException;
}
