package hornbook.catalogue.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EntryJsonTest {
    private static final String QUIRK = """
            {
              "id": "q-one",
              "title": "One",
              "when": "tone-hole-rim=rolled | model=m-x",
              "caution": "stop",
              "bites": "Filing cuts through the curl.",
              "do": "Lift low spots.",
              "stage": "stage-body",
              "tools": [{"id": "tool-a", "note": "small"}, {"id": "tool-b"}],
              "confirm": "A fingernail catches.",
              "group": "Body",
              "source": "common practice",
              "sureness": "from memory"
            }
            """;
    private static final String MODEL = """
            {
              "id": "m-x-alto",
              "make": "k-x",
              "title": "X, alto",
              "pattern": "X",
              "instruments": ["alto"],
              "years": {"from": 1930, "to": 1951},
              "serial_anchors": [{"serial": 1, "year": 1930}],
              "serial_ranges": [{"from": 1, "to": 21500}],
              "serial_letters": {"": 1.0},
              "traits": {"tone-hole-rim": {"rolled": 0.9, "straight": 0.1}, "rod-diameter": {"mean": 2.606, "sd": 0.02}},
              "absent": ["cup-depth"],
              "horns_seen": 2,
              "source": "this shop, j-0009, j-0019",
              "sureness": "fair"
            }
            """;

    private final EntryJson json = new EntryJson();

    @Test
    void aQuirkIsWrittenAsItWasRead() {
        assertThat(json.write(json.read(Kind.QUIRK, QUIRK))).isEqualTo(QUIRK);
    }

    @Test
    void aModelKeepsSharesAndMeasurementsApart() {
        Model model = (Model) json.read(Kind.MODEL, MODEL);
        assertThat(json.write(model)).isEqualTo(MODEL);
        assertThat(model.shares("tone-hole-rim").orElseThrow().share("rolled")).isEqualTo(0.9);
        assertThat(model.normal("rod-diameter")).contains(new Normal(2.606, 0.02));
        assertThat(model.provenance().jobs()).containsExactly("j-0009", "j-0019");
        assertThat(model.provenance().basis()).isEqualTo(Provenance.Basis.THIS_SHOP);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "\"bites\"; \"bite\"; bite; is not a field",
                "\"stop\"; \"halt\"; caution; halt",
                "\"tool-b\"; 7, \"x\": 1; tools.2.x; is not a field",
                "\"id\": \"tool-b\"; \"note\": \"x\"; tools.2.id; is missing",
                "tone-hole-rim=rolled; tone-hole-rim; when; letter"
            })
    void aBrokenEntryNamesItsField(String right, String wrong, String field, String why) {
        assertThatThrownBy(() -> json.read(Kind.QUIRK, QUIRK.replace(right, wrong)))
                .isInstanceOfSatisfying(UnreadableEntry.class, e -> {
                    assertThat(e.field()).isEqualTo(field);
                    assertThat(e.why()).contains(why);
                });
    }
}
