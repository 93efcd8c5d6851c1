package hornbook.indexer.index;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.apache.lucene.codecs.CodecUtil;
import org.apache.lucene.index.SegmentInfos;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.IOContext;
import org.apache.lucene.store.IndexInput;
import org.apache.lucene.store.NIOFSDirectory;

/** The folder of an index: says whether what is in it can be trusted, and empties it. */
final class IndexFolder {
    private static final Logger LOG = Logger.getLogger(IndexFolder.class.getName());

    private final Path folder;
    private final UnaryOperator<Directory> around;

    IndexFolder(Path folder) {
        this(folder, UnaryOperator.identity());
    }

    /** @param around put around what is written to: a test's failing disk */
    IndexFolder(Path folder, UnaryOperator<Directory> around) {
        this.folder = folder;
        this.around = around;
    }

    /** To be asked often: mapped into memory. */
    Directory directory() throws IOException {
        return around.apply(FSDirectory.open(folder));
    }

    /** To be asked once: the first mapping of a process takes longer than a find reads. */
    Directory plain() throws IOException {
        return new NIOFSDirectory(folder);
    }

    /** The stamp of the index there; empty where there is none, or one that is torn or of another version. */
    Optional<Stamp> trusted() {
        if (!Files.isDirectory(folder)) {
            return Optional.empty();
        }
        try (Directory directory = plain()) {
            SegmentInfos commit = SegmentInfos.readLatestCommit(directory);
            for (String file : commit.files(true)) {
                check(directory, file);
            }
            return Stamp.read(commit.getUserData());
        } catch (IOException | RuntimeException e) {
            // Whatever is wrong with it, the answer is the same: make it again.
            LOG.log(Level.FINE, "index in " + folder + " is not usable", e);
            return Optional.empty();
        }
    }

    private static void check(Directory directory, String file) throws IOException {
        try (IndexInput input = directory.openInput(file, IOContext.READONCE)) {
            CodecUtil.checksumEntireFile(input);
        }
    }

    /** Takes away every file in it. */
    void empty() throws IOException {
        Files.createDirectories(folder);
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(Files::isRegularFile).toList();
        }
        for (Path file : files) {
            Files.deleteIfExists(file);
        }
    }
}
