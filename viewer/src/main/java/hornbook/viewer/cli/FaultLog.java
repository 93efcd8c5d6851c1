package hornbook.viewer.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.logging.FileHandler;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;
import org.jspecify.annotations.Nullable;

/**
 * The log: a file that is opened only when there is something to write, so that a command that goes well leaves no
 * trace. Nothing of it reaches the terminal. A log that cannot be written is done without.
 */
public final class FaultLog extends Handler {
    private static final long MOST_BYTES = 1 << 20;

    private final Path file;
    // Kept here: the log manager holds loggers weakly, and this one's level would be forgotten.
    private final Logger vectorNotice =
            Logger.getLogger("org.apache.lucene.internal.vectorization.VectorizationProvider");

    @Nullable
    private Handler opened;

    private FaultLog(Path file) {
        this.file = file;
        setLevel(Level.INFO);
    }

    /** Sends everything that is logged in this process to the file. */
    public static FaultLog to(Path file) {
        LogManager.getLogManager().reset();
        FaultLog log = new FaultLog(file);
        log.vectorNotice.setLevel(Level.SEVERE);
        Logger.getLogger("").addHandler(log);
        return log;
    }

    @Override
    public synchronized void publish(LogRecord line) {
        if (!isLoggable(line)) {
            return;
        }
        try {
            Handler target = opened == null ? open() : opened;
            opened = target;
            target.publish(line);
        } catch (IOException cannotWrite) {
            setLevel(Level.OFF);
        }
    }

    private Handler open() throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        if (Files.exists(file) && Files.size(file) > MOST_BYTES) {
            Files.move(file, file.resolveSibling(file.getFileName() + ".old"), StandardCopyOption.REPLACE_EXISTING);
        }
        // A percent sign in the path would be read as a pattern.
        FileHandler handler = new FileHandler(file.toString().replace("%", "%%"), true);
        handler.setFormatter(new SimpleFormatter());
        handler.setLevel(Level.ALL);
        return handler;
    }

    @Override
    public synchronized void flush() {
        if (opened != null) {
            opened.flush();
        }
    }

    @Override
    public synchronized void close() {
        if (opened != null) {
            opened.close();
        }
    }
}
