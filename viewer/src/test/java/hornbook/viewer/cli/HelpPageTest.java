package hornbook.viewer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.EntryWriter;
import hornbook.shared.store.Backup;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.workshop.Workshop;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Every help page opens with a line that can be typed as it stands: each is run, on the demo shop. */
class HelpPageTest {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    static Path folder;

    private static Path shop;

    /**
     * What examples speak of as being there: the demo, an export of it, a clock that runs, a timer, a step of taking down,
     * a picture, a lot and a supplier out of use.
     */
    @BeforeAll
    static void makeShop() {
        shop = folder.resolve("template/shop");
        try (Workshop demo = DemoShop.in(shop)) {
            demo.clocks().start("j-0237", "task-teardown", 1, "N.O.");
            demo.standingBook().timer("j-0237", "penetrant", Duration.ofMinutes(60));
            demo.jobBook().tookDown("j-0243", "neck", "one thumb screw", "");
            demo.stockBook().retire("lot-0501");
            demo.supplierBook().retire("Gable Street");
            demo.exporting().to(folder.resolve("template/shop-files"));
            demo.packs().make(folder.resolve("template/shop-pack.zip"));
            demo.search();
        }
        entryToPut();
        Path backup = new Backup(shop).make(LocalDate.of(2026, 9, 30)).file();
        try {
            Files.move(backup, folder.resolve("template/shop-backup.zip"));
            ImageIO.write(
                    new BufferedImage(2, 2, BufferedImage.TYPE_INT_RGB),
                    "png",
                    folder.resolve("template/bench.png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A shipped entry with a word more. */
    private static void entryToPut() {
        Entry entry = Catalogue.shipped().entry("q-red-rot").orElseThrow();
        String changed = new EntryWriter().write(entry).replace("\"confirm\": \"", "\"confirm\": \"By daylight: ");
        try {
            Files.writeString(folder.resolve("template/q-red-rot.json"), changed);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @TestFactory
    Stream<DynamicTest> theExampleOfEachHelpPageWorks() {
        return commands(called(folder).cli().line())
                .map(command ->
                        DynamicTest.dynamicTest(command.getCommandSpec().qualifiedName(), () -> exampleWorks(command)));
    }

    private void exampleWorks(CommandLine command) throws IOException {
        String first = command.getUsageMessage().lines().findFirst().orElseThrow();
        String example = command.getCommandSpec().usageMessage().footer()[0];
        assertThat(first).isEqualTo("Example: " + example).startsWith("Example: hornbook ");
        Path home = Files.createTempDirectory(folder, "home");
        copy(folder.resolve("template"), home);
        CalledCli called = called(home);
        assertThat(called.run(words(example.replaceFirst("hornbook ", ""))))
                .as(example + "\n" + called.err)
                .isEqualTo(ExitCode.DONE);
    }

    /** As a shell splits a line: quotation marks hold words together. */
    private static String[] words(String line) {
        return WORD.matcher(line)
                .results()
                .map(word -> word.group(1) != null ? word.group(1) : word.group(2))
                .toArray(String[]::new);
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : (Iterable<Path>) all::iterator) {
                Path target = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(path, target);
                }
            }
        }
    }

    private static CalledCli called(Path home) {
        return new CalledCli(
                Map.of("DISPLAY", ":1", "HORNBOOK_SHOP", home.resolve("shop").toString()), "Linux", home);
    }

    private static Stream<CommandLine> commands(CommandLine line) {
        List<CommandLine> below = List.copyOf(line.getSubcommands().values());
        return Stream.concat(Stream.of(line), below.stream().flatMap(HelpPageTest::commands));
    }
}
