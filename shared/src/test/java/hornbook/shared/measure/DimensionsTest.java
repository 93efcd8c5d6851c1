package hornbook.shared.measure;

import static hornbook.shared.measure.Rows.READER;
import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dimensions as stock records write them; every distinct form of the demonstration shop's lots is in the table. */
class DimensionsTest {

    @Test
    void readsEveryFormOfTheDemonstrationShop() {
        for (NamedCsvRecord row : Rows.of("lot_dimensions.csv")) {
            DimensionValue value = READER.dimension(row.getField("value")).orThrow();
            String kind = switch (value) {
                case DimensionValue.Size(Measured size) -> size.kind() == Measured.Kind.RANGE ? "range" : "size";
                case DimensionValue.Word _ -> "word";
                case DimensionValue.Number _ -> "number";
            };
            assertThat(kind).as(row.getField("value")).isEqualTo(row.getField("kind"));
        }
    }

    @Test
    void keepsTheOrderAndTheKinds() {
        Map<String, DimensionValue> read = READER.dimensions(
                        "length=1-1/64\";diameter=#40; slot=1 ;nose=headed-tapered;")
                .orThrow();
        assertThat(read.keySet()).containsExactly("length", "diameter", "slot", "nose");
        assertThat(read.get("diameter")).isEqualTo(new DimensionValue.Size(Measured.single(Length.ofInches("0.098"))));
        assertThat(read.get("nose")).isEqualTo(new DimensionValue.Word("headed-tapered"));
        assertThat(READER.dimensions("").orThrow()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            length              | name=value
            =3 mm               | name=value
            length=3..          | length:
            length=3 mm;length=4 mm | twice
            length=             | length:
            wall=-0.5 mm        | below nought
            """)
    void refusesWithTheNameOfTheDimension(String text, String why) {
        assertThat(READER.dimensions(text).refusal().orElseThrow()).contains(why);
    }
}
