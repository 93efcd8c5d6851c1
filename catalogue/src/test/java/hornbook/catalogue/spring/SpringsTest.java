package hornbook.catalogue.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.spring.SpringAnswer.Usual;
import hornbook.catalogue.spring.SpringAnswer.Wire;
import hornbook.shared.measure.Length;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.BadInput;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpringsTest {
    private static final Springs SPRINGS = new Springs(Catalogue.shipped(), StandardSizes.load());

    private static SpringQuestion needle(String diameter, String length, String to, String toLength, String key) {
        return new SpringQuestion(
                mm(diameter),
                mm(""),
                mm(""),
                mm(length).orElseThrow(),
                mm(to),
                mm(toLength),
                mm("1.08"),
                Optional.of(key).filter(k -> !k.isEmpty()),
                "alto");
    }

    private static Optional<Length> mm(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(Length.ofMillimetres(text));
    }

    /**
     * Deflection of a cantilever loaded at its end, y = W l³/(3 E I) with I = π d⁴/64 and b h³/12 (Machinery's Handbook,
     * beams), reckoned by hand with E = 30 000 000 psi: 1.00 x 45 mm gives 0.3343 N/mm; 4 x 0.5 x 55 mm 0.1554 N/mm.
     */
    @Test
    void isACantilever() {
        assertThat(SPRINGS.answer(needle("1.00", "45", "", "", "")).newtonPerMm())
                .isCloseTo(0.3343, within(0.0002));
        SpringQuestion flat = new SpringQuestion(
                mm(""), mm("4"), mm("0.5"), mm("55").orElseThrow(), mm(""), mm(""), mm(""), Optional.empty(), "alto");
        assertThat(SPRINGS.answer(flat).newtonPerMm()).isCloseTo(0.1554, within(0.0002));
    }

    /** The figures of the project's trade notes (parts-and-supplies section 8): +22, +46 and +17 per cent. */
    @ParameterizedTest
    @CsvSource({"1.05, '', 22", "1.10, '', 46", "'', 42.75, 17"})
    void aChangeInPerCent(String to, String toLength, double percent) {
        assertThat(SPRINGS.answer(needle("1.00", "45", to, toLength, "")).changePercent())
                .isCloseTo(percent, within(0.5));
    }

    @Test
    void asStiffAtAnotherLength() {
        SpringAnswer answer = SPRINGS.answer(needle("1.00", "45", "", "50", ""));
        double wire = answer.sameStiffness();
        assertThat(Springs.change(1.00, 45, wire, 50, 4)).isCloseTo(0, within(0.5));
        assertThat(wire).isGreaterThan(1.0);
    }

    /** Music wire 17 is .039 in, 0.9906 mm, and 18 .041 in (gauges.csv). */
    @Test
    void namesWiresNearItAndWhatTheHoleTakes() {
        SpringAnswer answer = SPRINGS.answer(needle("1.00", "45", "", "", ""));
        assertThat(answer.wires()).extracting(Wire::name).contains("music wire 17", "music wire 18", "1.05 mm");
        assertThat(answer.wires())
                .filteredOn(w -> w.name().equals("1.00 mm") || w.name().equals("1.10 mm"))
                .extracting(Wire::goesIn)
                .containsExactly(true, false);
    }

    /** The trade notes' table: low Eb and low C of an alto 1.10 to 1.20. */
    @Test
    void saysWhatTheKeyUsuallyHas() {
        Usual low = SPRINGS.answer(needle("1.00", "45", "", "", "low C (open)"))
                .usual()
                .getFirst();
        assertThat(low.from()).isEqualTo(1.10);
        assertThat(low.to()).isEqualTo(1.20);
        assertThat(low.stands()).isEqualTo("thinner");
    }

    @Test
    void saysWhatItCannotRead() {
        assertThatThrownBy(() -> SPRINGS.answer(needle("1.00", "45", "", "", "kazoo")))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("kazoo")
                .hasMessageContaining("Upper stack");
        assertThatThrownBy(() -> SPRINGS.answer(needle("25", "45", "", "", "")))
                .hasMessageContaining("25.0 mm is no spring of a key");
        assertThatThrownBy(() -> SPRINGS.answer(needle("0", "45", "", "", ""))).isInstanceOf(BadInput.class);
        assertThatThrownBy(() -> SPRINGS.answer(needle("", "45", "", "", ""))).isInstanceOf(BadInput.class);
    }
}
