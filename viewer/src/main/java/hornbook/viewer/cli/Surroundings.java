package hornbook.viewer.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * What a command finds around it: the environment, the system, the folders it is called from, and where it may write.
 *
 * @param variables environment variables
 * @param system name of the operating system as Java gives it
 * @param home the user's own folder
 * @param here the folder the command is called from
 * @param out for answers, and for nothing else
 * @param err for all other talk
 */
public record Surroundings(
        Map<String, String> variables, String system, Path home, Path here, PrintWriter out, PrintWriter err) {

    public static Surroundings ofThisProcess() {
        return new Surroundings(
                System.getenv(),
                System.getProperty("os.name", ""),
                Path.of(System.getProperty("user.home", ".")),
                Path.of("").toAbsolutePath(),
                writer(FileDescriptor.out),
                writer(FileDescriptor.err));
    }

    /** UTF-8 whatever the locale says: an answer holds flats and sharps. */
    private static PrintWriter writer(FileDescriptor descriptor) {
        return new PrintWriter(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
    }

    /** The variable's value; an empty one counts as not set. */
    public Optional<String> variable(String name) {
        return Optional.ofNullable(variables.get(name)).filter(value -> !value.isBlank());
    }

    public boolean isWindows() {
        return system.startsWith("Windows");
    }

    public boolean isMac() {
        return system.startsWith("Mac");
    }

    /** Whether a window can be shown; a headless toolkit, as tests and training use it, counts. */
    public boolean hasDisplay() {
        return isWindows()
                || isMac()
                || variable("DISPLAY").isPresent()
                || variable("WAYLAND_DISPLAY").isPresent()
                || "Headless".equals(System.getProperty("glass.platform"));
    }
}
