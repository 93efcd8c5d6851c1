package hornbook.catalogue.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EntryReaderTest {
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

    private final EntryReader reader = new EntryReader();
    private final EntryWriter writer = new EntryWriter();

    @Test
    void aQuirkIsWrittenAsItWasRead() {
        assertThat(writer.write(reader.read(Kind.QUIRK, QUIRK))).isEqualTo(QUIRK);
    }

    @Test
    void aModelKeepsSharesAndMeasurementsApart() {
        Model model = (Model) reader.read(Kind.MODEL, MODEL);
        assertThat(writer.write(model)).isEqualTo(MODEL);
        assertThat(model.shares("tone-hole-rim").orElseThrow().share("rolled")).isEqualTo(0.9);
        assertThat(model.normal("rod-diameter")).contains(new Normal(2.606, 0.02));
        assertThat(model.provenance().jobs()).containsExactly("j-0009", "j-0019");
        assertThat(model.provenance().basis()).isEqualTo(Provenance.Basis.THIS_SHOP);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "\"bites\"; \"bite\"; bites; is missing",
                "\"note\"; \"notes\"; tools.1.notes; is not a field",
                "\"stop\"; \"halt\"; caution; 'halt' is not one of stop, care, note",
                "\"tool-b\"; \"tool-b\", \"x\": 1; tools.2.x; is not a field",
                "\"tool-b\"; 7; tools.2.id; must be text",
                "\"id\": \"tool-b\"; \"note\": \"x\"; tools.2.id; is missing",
                "\"bites\": \"Filing cuts through the curl.\",; ; bites; is missing",
                "\"One\"; null; title; null stands for nothing",
                "tone-hole-rim=rolled; tone-hole-rim; when; letter"
            })
    void aBrokenQuirkNamesItsField(String right, String wrong, String field, String why) {
        refused(Kind.QUIRK, QUIRK.replace(right, wrong == null ? "" : wrong), field, why);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "0.9; \"0.9\"; traits.tone-hole-rim.rolled; must be a number",
                "\"horns_seen\": 2; \"horns_seen\": 2.5; horns_seen; must be a whole number",
                "\"horns_seen\": 2; \"horns_seen\": 99999999999; horns_seen; at most",
                "[\"alto\"]; \"alto\"; instruments; must be a list",
                "{\"from\": 1930, \"to\": 1951}; [1930]; years; must be an object",
                "0.02; 1e999; traits.rod-diameter.sd; must be a number",
                "\"pattern\"; \"title\"; title; is there twice"
            })
    void aBrokenModelNamesItsField(String right, String wrong, String field, String why) {
        refused(Kind.MODEL, MODEL.replace(right, wrong), field, why);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "{", "{} {}", "nonsense", "{\"id\": \"q-one\",}", "null"})
    void whatIsNoObjectIsRefused(String text) {
        assertThatThrownBy(() -> reader.read(Kind.QUIRK, text)).isInstanceOf(UnreadableEntry.class);
    }

    private void refused(Kind kind, String text, String field, String why) {
        assertThatThrownBy(() -> reader.read(kind, text)).isInstanceOfSatisfying(UnreadableEntry.class, e -> {
            assertThat(e.field()).isEqualTo(field);
            assertThat(e.why()).contains(why);
        });
    }
}
