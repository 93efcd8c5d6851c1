package hornbook.catalogue.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class EntryCheckTest {
    private static final Catalogue SHIPPED = Catalogue.shipped();
    private final EntryCheck check = new EntryCheck(SHIPPED);
    private final EntryWriter writer = new EntryWriter();

    @ParameterizedTest
    @EnumSource(Kind.class)
    void shippedEntriesPass(Kind kind) {
        assertThat(SHIPPED.all(kind).values().stream()
                        .limit(300)
                        .flatMap(e -> check.check(kind, e.id(), writer.write(e)).stream()))
                .isEmpty();
    }

    /** The control: the same entry, broken in one place, is refused and the place is named. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "q-red-rot | \"bites\" | \"bite\" | bites | is missing",
                "q-red-rot | \"bites\" | \"bite\" | bite | is not a field",
                "q-red-rot | \"care\" | \"halt\" | caution | stop",
                "q-red-rot | wall-state=pitted | wall-state | when | letter",
                "q-red-rot | \"id\": \"tool-loupe\" | \"note\": \"x\" | tools.2.id | is missing",
                "f-low-warble | 0.48 | 0.98 | causes | add up to 1.5",
                "f-low-warble | 0.48 | 1.48 | causes.1.share | 1",
                "task-repad | 0.22 | -0.22 | sigma | 0",
                "tone-hole-rim | \"miss\": 0.06 | \"miss\": \"0.06\" | miss | number",
                "part-neck | \"part-neck\" | \"Part Neck!\" | id | small letters"
            })
    void aBrokenEntryIsRefused(String id, String right, String wrong, String field, String why) {
        Entry entry = SHIPPED.entry(id).orElseThrow();
        String text = writer.write(entry);
        assertThat(text).contains(right);
        List<Problem> problems = check.check(entry.entryKind(), "x.json", text.replaceFirst("\\Q" + right, wrong));
        assertThat(problems).anySatisfy(p -> {
            assertThat(p.field()).isEqualTo(field);
            assertThat(p.why()).contains(why);
            assertThat(p.setAside()).isTrue();
            assertThat(p.line()).startsWith("x.json, " + field + ": ");
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "q-red-rot | tool-loupe | tool-lupe | tools.2 | perhaps tool-loupe is meant",
                "q-red-rot | wall-state=pitted | wall-state=pited | when | perhaps pitted is meant",
                "q-red-rot | stage-inspect | stage-inspekt | stage | perhaps stage-inspect is meant"
            })
    void anIdThatDoesNotExistIsARemarkWithTheNearest(String id, String right, String wrong, String field, String todo) {
        Entry entry = SHIPPED.entry(id).orElseThrow();
        String text = writer.write(entry).replace(right, wrong);
        assertThat(check.check(entry.entryKind(), "x.json", text))
                .singleElement()
                .satisfies(p -> {
                    assertThat(p.field()).isEqualTo(field);
                    assertThat(p.whatToDo()).isEqualTo(todo);
                    assertThat(p.setAside()).isFalse();
                });
    }

    @Test
    void whatIsNotJsonIsRefused() {
        assertThat(check.check(Kind.QUIRK, "x.json", "{\"id\": "))
                .singleElement()
                .satisfies(p -> assertThat(p.why()).startsWith("is not JSON"));
    }
}
