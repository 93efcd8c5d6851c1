package hornbook.catalogue.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.catalogue.entry.Condition.Always;
import hornbook.catalogue.entry.Condition.And;
import hornbook.catalogue.entry.Condition.Between;
import hornbook.catalogue.entry.Condition.Is;
import hornbook.catalogue.entry.Condition.Of;
import hornbook.catalogue.entry.Condition.Or;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The language as the project's trade notes define it: & and, | or, & binding tighter, ranges with both ends. */
class ConditionsTest {
    @Test
    void andBindsTighterThanOr() {
        assertThat(Conditions.read("a=x | b=y & c=z"))
                .isEqualTo(new Or(List.of(new Is("a", "x"), new And(List.of(new Is("b", "y"), new Is("c", "z"))))));
    }

    @Test
    void bracketsBindFirst() {
        assertThat(Conditions.read("(a=x | b=y) & c=z"))
                .isEqualTo(new And(List.of(new Or(List.of(new Is("a", "x"), new Is("b", "y"))), new Is("c", "z"))));
    }

    @Test
    void simpleStatements() {
        assertThat(Conditions.read("always")).isEqualTo(new Always());
        assertThat(Conditions.read("pad-thickness=2.8..3.4")).isEqualTo(new Between("pad-thickness", 2.8, 3.4));
        assertThat(Conditions.read("model=m-one-alto")).isEqualTo(new Of("m-one-alto"));
        assertThat(Conditions.read("make=k-one")).isEqualTo(new Of("k-one"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "always",
                "a=x",
                "a=x | b=y & c=z",
                "(a=x | b=y) & c=z",
                "pad-thickness=2.8..3.4",
                "d=-1..0.05",
                "model=m-x | make=k-y"
            })
    void whatIsWrittenReadsBackEqual(String text) {
        assertThat(Conditions.write(Conditions.read(text))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "a, letter 2",
        "a=, letter 3",
        "=x, letter 3",
        "a=x &, letter 6",
        "a=x b=y, letter 5",
        "(a=x, letter 5",
        "a=3..2, high to low"
    })
    void whatIsNotAConditionIsRefusedWithItsPlace(String text, String said) {
        assertThatThrownBy(() -> Conditions.read(text)).hasMessageContaining(said);
    }
}
