package hornbook.shared.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The shop's own knowledge as exchange files: read and written by the catalogue, which alone knows what they mean. */
public interface KnowledgeFiles {

    /** What was read: entries to keep, rows refused, and how many rows there were. */
    record Incoming(int read, List<EntryFile> entries, List<Refusal> refused, List<String> remarks) {}

    /** Names of the files it reads and writes. */
    List<String> names();

    /** Reads those of its files that stand in the folder; never throws for what is in them. */
    Incoming read(Path folder);

    /** Writes all of its files into the folder. */
    void write(Path folder) throws IOException;
}
