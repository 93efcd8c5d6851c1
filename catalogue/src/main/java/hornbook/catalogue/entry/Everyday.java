package hornbook.catalogue.entry;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.function.BiConsumer;

/** Everyday words for what goes wrong, in groups that mean nearly the same. */
public final class Everyday {
    private static final String FILE = "everyday.txt";

    private Everyday() {}

    /** Each word or phrase with the name of its group. */
    public static void each(BiConsumer<String, String> to) {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Everyday.class.getResourceAsStream(FILE)), StandardCharsets.UTF_8))) {
            lines.lines().filter(line -> !line.startsWith("#")).forEach(line -> {
                int colon = line.indexOf(':');
                for (String word : line.substring(colon + 1).split(",")) {
                    to.accept(word.strip(), line.substring(0, colon));
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
