package hornbook.shared.store.bench;

import hornbook.shared.exchange.Import;
import hornbook.shared.exchange.ImportReport;
import hornbook.shared.exchange.Names;
import hornbook.shared.exchange.NoKnowledge;
import hornbook.shared.exchange.SheetImport;
import hornbook.shared.exchange.SheetKind;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import hornbook.shared.store.Check;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Mutated files to every reader: each is taken, or refused in words; never an exception, never a torn shop. */
public final class ReaderFuzz {
    private static final String[] SPICE = {
        "\"", ",", ";", "\n", "\r", "\t", "\0", "\uFEFF", "-", "999999999999", "é", "null", "{", "]", "..", "''", "0x"
    };

    private ReaderFuzz() {}

    /** Inputs tried, refusals met, and what should never have been. */
    public record Outcome(int inputs, int refusals, List<String> wrong) {}

    public static Outcome run(Path folder, Path good, int n, long seed) throws Exception {
        Random random = new Random(seed);
        Path given = Files.createDirectories(folder.resolve("given"));
        List<Path> files;
        try (var list = Files.list(good)) {
            files = list.filter(f -> !f.getFileName().toString().equals("movements.csv"))
                    .sorted()
                    .toList();
        }
        List<String> wrong = new ArrayList<>();
        int refusals = 0;
        Path shop = folder.resolve("fuzzed");
        try (Books books = Books.open(shop, Access.WRITE)) {
            SheetImport sheets = new SheetImport(books, StandardSizes.load().reader(), Names.NONE);
            new Import(books, new NoKnowledge()).from(good, false);
            for (int i = 0; i < n; i++) {
                Path file = files.get(random.nextInt(files.size()));
                byte[] bad = mutated(Files.readAllBytes(file), random);
                Path at = Files.write(given.resolve(file.getFileName().toString()), bad);
                try {
                    ImportReport report = random.nextBoolean()
                            ? new Import(books, new NoKnowledge()).from(given, random.nextInt(4) > 0)
                            : sheets.from(at, SheetKind.values()[random.nextInt(5)], Map.of(), random.nextInt(4) > 0);
                    refusals += report.refused().size();
                    if (report.taken()
                                    + report.refused().stream()
                                            .filter(r -> r.row() > 0)
                                            .count()
                            > report.read()) {
                        wrong.add("input " + i + ": more taken and refused than read " + report);
                    }
                } catch (BadInput e) {
                    refusals++;
                    if (String.valueOf(e.getMessage()).contains("Exception")) {
                        wrong.add("input " + i + ": " + e.getMessage());
                    }
                } catch (RuntimeException | Error e) {
                    wrong.add("input " + i + " to " + file.getFileName() + ": " + e + " at " + e.getStackTrace()[0]);
                }
                Files.delete(at);
            }
        }
        new Check(shop).run().problems().forEach(p -> wrong.add(p.line()));
        return new Outcome(n, refusals, wrong);
    }

    private static byte[] mutated(byte[] good, Random random) {
        String text = new String(good, StandardCharsets.UTF_8);
        StringBuilder some = new StringBuilder(text.substring(0, Math.min(text.length(), 400 + random.nextInt(1500))));
        for (int edits = random.nextInt(5); edits >= 0; edits--) {
            int at = random.nextInt(some.length());
            switch (random.nextInt(3)) {
                case 0 -> some.insert(at, SPICE[random.nextInt(SPICE.length)]);
                case 1 -> some.delete(at, Math.min(some.length(), at + random.nextInt(20)));
                default -> some.insert(at, some.substring(random.nextInt(at + 1), at));
            }
            if (some.isEmpty()) {
                some.append(' ');
            }
        }
        byte[] bytes = some.toString().getBytes(StandardCharsets.UTF_8);
        if (random.nextInt(5) == 0) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return bytes;
    }

    public static void main(String[] given) throws Exception {
        Arguments arguments = Arguments.of(given);
        System.out.println("seed " + arguments.seed() + ": "
                + run(
                        Files.createTempDirectory("fuzz"),
                        Path.of(arguments.text("good", "src/test/resources/small-shop")),
                        arguments.n(10_000),
                        arguments.seed()));
    }
}
