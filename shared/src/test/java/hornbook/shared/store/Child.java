package hornbook.shared.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Another process on the same class path. */
public final class Child {
    private Child() {}

    /** Starts a main program; its answers are read from its standard output. */
    public static Process start(Class<?> main, String... arguments) throws IOException {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--enable-native-access=ALL-UNNAMED",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        line.addAll(List.of(arguments));
        return new ProcessBuilder(line)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }
}
