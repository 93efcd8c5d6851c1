package hornbook.catalogue.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.exchange.KnowledgeFiles.Incoming;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files damaged at random: rows are refused with a reason, nothing throws, and what is taken can be kept. */
class MutatedFilesTest {
    private static final List<String> FILES =
            List.of("makes.csv", "stencils.csv", "models.jsonl", "layout.csv", "takedown.csv", "looks.csv");
    private static final Catalogue SHIPPED = Catalogue.shipped();
    private static final long SEED = 20_260_930;
    private static final String BITS = ",\"\n\r;:>|-0.9eé{}[]m-k-\u0000\t ";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"makes.csv", "stencils.csv", "models.jsonl", "layout.csv", "takedown.csv", "looks.csv"})
    void damageIsNamed(String file) throws IOException {
        for (String name : FILES) {
            Files.writeString(folder.resolve(name), beginning(name));
        }
        Random random = new Random(SEED + file.hashCode());
        for (int i = 0; i < 8; i++) {
            Files.write(folder.resolve(file), damage(beginning(file), random));
            Incoming read = new KnowledgeSheets(SHIPPED).read(folder);
            assertThat(read.refused()).allSatisfy(r -> {
                assertThat(r.why()).isNotBlank().doesNotContain("Exception");
                assertThat(FILES).contains(r.file());
            });
            assertThat(read.entries())
                    .allSatisfy(e -> assertThat(e.path()).matches("[a-z-]+/[a-z0-9][a-z0-9.-]*\\.json"));
        }
    }

    /** The first lines; they belong together. */
    private static String beginning(String name) throws IOException {
        String path = "/hornbook/catalogue/exchange/" + name;
        try (InputStream in = Objects.requireNonNull(MutatedFilesTest.class.getResourceAsStream(path))) {
            String whole = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return whole.lines().limit(name.equals("models.jsonl") ? 2 : 6).collect(Collectors.joining("\n", "", "\n"));
        }
    }

    private static byte[] damage(String text, Random random) {
        StringBuilder damaged = new StringBuilder(text);
        for (int n = 1 + random.nextInt(3); n > 0; n--) {
            int at = random.nextInt(damaged.length());
            int to = Math.min(damaged.length(), at + random.nextInt(1 + random.nextInt(30)));
            int from = random.nextInt(BITS.length());
            damaged.replace(at, to, BITS.substring(from, Math.min(BITS.length(), from + random.nextInt(4))));
        }
        byte[] bytes = damaged.toString().getBytes(StandardCharsets.UTF_8);
        if (random.nextInt(10) == 0) {
            bytes[random.nextInt(bytes.length)] = (byte) 0xff;
        }
        return bytes;
    }
}
