package hornbook.catalogue.may;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.UseOn;
import hornbook.shared.shop.BadInput;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Verdicts: the shipped entries, common practice from memory; acetone's statements: the EU CLP listing. */
class MayTest {
    private static final Catalogue SHIPPED = Catalogue.shipped();
    private static final May MAY = new May(SHIPPED);

    @ParameterizedTest
    @CsvSource({
        "sup-acetone, lacquer-type, nitrocellulose, stop",
        "acetone, body-finish, bare, ok",
        "Acetone, body-finish, silver-bright, care",
        "sup-acetone, lacquer-type, baked-epoxy|nitrocellulose, stop",
        "sup-acetone, lacquer-type, unknown, stop",
        "sup-acetone, body-finish, clear-lacquer, stop",
        "sup-acetone, bell-brace, ring, not known",
        "sup-acetone, lacquer-type, none, not known",
        "op-swedge-tube, key-material, white-cast, stop",
        "process-boiling-water, roller-material, celluloid, stop",
        "boiling water, lacquer-type, nitrocellulose, stop"
    })
    void verdicts(String thing, String trait, String value, String verdict) {
        assertThat(MAY.answer(MayQuestion.of(thing, trait, value)).verdict().word())
                .isEqualTo(verdict);
    }

    @Test
    void ofSeveralTheHardestWins() {
        MayAnswer answer = MAY.answer(new MayQuestion(
                "sup-acetone", Map.of("body-finish", "bare", "roller-material", "celluloid", "lacquer-type", "none")));
        assertThat(answer.verdict()).isEqualTo(Allowed.STOP);
        assertThat(answer.why()).isEqualTo("dissolves celluloid");
        assertThat(answer.grounds()).extracting(Ground::verdict).containsExactly(Allowed.STOP, Allowed.OK);
        assertThat(answer.instead()).contains("soap");
        assertThat(answer.source()).contains("common practice");
    }

    @Test
    void theCautionStandsWithTheAnswerAndDefersToTheSheet() {
        MayAnswer answer = MAY.answer(MayQuestion.of("sup-acetone", "body-finish", "bare"));
        assertThat(answer.caution()).contains("safety data sheet").contains("Nitrile");
        assertThat(answer.lookFirst())
                .contains("roller-material", "body-material")
                .doesNotContain("body-finish");
    }

    /** No pair without an entry is ever allowed: every supply that has entries, on every value that they do not name. */
    @Test
    void whatNoEntrySaysIsNeverAllowed() {
        int asked = 0;
        for (UseOn use : SHIPPED.all(UseOn.class).values()) {
            for (var trait : SHIPPED.traits().values()) {
                for (var value : trait.values()) {
                    boolean said = SHIPPED.all(UseOn.class).values().stream()
                            .anyMatch(u -> u.use().equals(use.use())
                                    && u.trait().equals(trait.id())
                                    && u.values().contains(value.id()));
                    if (!said && asked++ % 97 == 0) {
                        assertThat(MAY.answer(MayQuestion.of(use.use(), trait.id(), value.id()))
                                        .verdict())
                                .isNotEqualTo(Allowed.OK);
                    }
                }
            }
        }
        assertThat(asked).isGreaterThan(1000);
    }

    @ParameterizedTest
    @CsvSource({
        "acetoon, lacquer-type, none, perhaps acetone is meant",
        "acetone, laquer-type, none, perhaps lacquer-type is meant",
        "acetone, lacquer-type, nitrocelulose, perhaps nitrocellulose is meant"
    })
    void whatIsNotKnownIsSaidInOneLine(String thing, String trait, String value, String said) {
        assertThatThrownBy(() -> MAY.answer(MayQuestion.of(thing, trait, value)))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(said);
    }
}
