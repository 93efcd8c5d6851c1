package hornbook.indexer.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Fitting;
import hornbook.catalogue.entry.Operation;
import hornbook.shared.shop.BadInput;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaTest {
    private static final Map<String, Double> KNOWN =
            Map.of("amt", 0.3, "len", 61.0, "od", 4.0, "to", 2.92, "n", 1.0, "cup", 38.25, "size", 38.0);

    private static double value(String name) {
        return KNOWN.getOrDefault(name, Double.NaN);
    }

    /** By hand; the first is the trap the trade notes name: 0.3/0.1 is three passes, not four. */
    @ParameterizedTest
    @CsvSource({
        "ceil(amt/0.1)*ceil(len/25), 9",
        "(od-to)/2, 0.54",
        "2 + 3 * 4 - 6 / 3, 12",
        "-amt + 1, 0.7",
        "10*abs(size - floor(2*cup + 0.5)/2) + abs(size - cup), 5.25"
    })
    void reckons(String formula, double expected) {
        assertThat(FormulaReader.formula(formula).value(FormulaTest::value)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void whatIsNotKnownAsksAndIsNotFalse() {
        Check check = FormulaReader.check("amt <= 0.5 and wall >= 0.5");
        assertThat(check.broken(FormulaTest::value)).isEmpty();
        assertThat(check.unknown(FormulaTest::value)).containsExactly("wall");
    }

    @Test
    void whatSurelyDoesNotHoldIsNamedThoughMoreIsNotKnown() {
        Check check = FormulaReader.check("wall >= 0.5 and amt <= 0.2");
        assertThat(check.broken(FormulaTest::value))
                .get()
                .extracting(Comparison::text)
                .isEqualTo("amt <= 0.2");
    }

    @ParameterizedTest
    @ValueSource(strings = {"amt < 0.31", "amt <= 0.3", "amt >= 0.3", "n == 1", "n != 2", "len > 60"})
    void compares(String check) {
        assertThat(FormulaReader.check(check).broken(FormulaTest::value)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "amt", "amt <=", "amt <= 0.2 and", "amt & 1 <= 2", "ceil amt <= 2", "(amt <= 2", "1 2 <= 3"})
    void saysWhatIsNoCheck(String text) {
        assertThatThrownBy(() -> FormulaReader.check(text))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(text);
    }

    /** Every formula of the shipped entries can be read. */
    @Test
    void shippedFormulasAreReadable() {
        Catalogue shipped = Catalogue.shipped();
        for (Operation operation : shipped.operations().values()) {
            assertThat(FormulaReader.check(operation.check()).all()).isNotEmpty();
            FormulaReader.formula(operation.units());
        }
        long kinds = shipped.ids().stream()
                .filter(id -> shipped.fitting(id).isPresent())
                .peek(id -> readable(shipped.fitting(id).orElseThrow(), shipped, id))
                .count();
        assertThat(kinds).isGreaterThan(60);
    }

    private static void readable(Fitting fitting, Catalogue catalogue, String id) {
        Crafts crafts = new Crafts(catalogue, id, fitting);
        assertThat(crafts.of(id).moves()).isNotNull();
        fitting.blanks()
                .keySet()
                .forEach(blank -> assertThat(crafts.of(blank).moves()).isNotEmpty());
        fitting.derived().values().forEach(FormulaReader::formula);
    }
}
