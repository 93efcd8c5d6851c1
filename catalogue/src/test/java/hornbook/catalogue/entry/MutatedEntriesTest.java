package hornbook.catalogue.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Entries damaged at random: every one is either taken or refused by field, none throws. */
class MutatedEntriesTest {
    private static final Catalogue SHIPPED = Catalogue.shipped();
    private static final long SEED = 20_260_930;
    private static final String BITS = "{}[]\",:0-9.eE+truefalsn\\u0000 \t\né♭|&=";

    private final EntryCheck check = new EntryCheck(SHIPPED);
    private final EntryReader reader = new EntryReader();
    private final EntryWriter writer = new EntryWriter();

    @ParameterizedTest
    @EnumSource(Kind.class)
    void damageIsNamed(Kind kind) {
        Random random = new Random(SEED + kind.ordinal());
        List<? extends Entry> entries = List.copyOf(SHIPPED.all(kind).values());
        for (int i = 0; i < 100 && !entries.isEmpty(); i++) {
            String whole = writer.write(entries.get(random.nextInt(entries.size())));
            String damaged = damage(whole, random);
            List<Problem> problems = check.check(kind, "x.json", damaged);
            assertThat(problems).allSatisfy(p -> {
                assertThat(p.line()).doesNotContain("Exception").doesNotContain("null,");
                assertThat(p.why()).isNotBlank();
                assertThat(p.whatToDo()).isNotBlank();
            });
            if (problems.stream().noneMatch(Problem::setAside)) {
                assertThat(reader.read(kind, damaged).id()).isNotEmpty();
            }
        }
    }

    private static String damage(String text, Random random) {
        StringBuilder damaged = new StringBuilder(text);
        for (int n = 1 + random.nextInt(3); n > 0; n--) {
            int at = random.nextInt(damaged.length());
            int to = Math.min(damaged.length(), at + random.nextInt(1 + random.nextInt(40)));
            int from = random.nextInt(BITS.length());
            damaged.replace(at, to, BITS.substring(from, Math.min(BITS.length(), from + random.nextInt(4))));
        }
        return damaged.toString();
    }
}
