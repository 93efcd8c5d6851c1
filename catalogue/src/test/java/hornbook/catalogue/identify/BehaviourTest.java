package hornbook.catalogue.identify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.catalogue.entry.CautionLevel;
import hornbook.catalogue.entry.Look;
import hornbook.shared.shop.Horn;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What must hold whatever is asked: the project's definitions of identification. */
class BehaviourTest {
    @TempDir
    static Path folder;

    private static Demo demo;
    private static Identify identify;

    private static final String[] LOOKS = {
        "family-member=alto",
        "bell-brace=three-point",
        "octave-mechanism=auto-slide",
        "rod-diameter=2.84 mm",
        "tone-hole-rim=rolled|straight",
        "key-height-stop=cork-on-foot|no:adjustable-stop",
        "bell-key-side=left"
    };

    @BeforeAll
    static void open() {
        demo = new Demo(folder);
        identify = demo.identify();
    }

    @AfterAll
    static void close() {
        demo.close();
    }

    @Test
    void theOrderOfAnswersChangesNothing() {
        List<Seen> looks = new ArrayList<>(demo.seen(LOOKS));
        Answer first = identify.answer(Question.of(looks));
        for (int seed = 0; seed < 5; seed++) {
            Collections.shuffle(looks, new Random(seed));
            alike(identify.answer(Question.of(looks)), first);
        }
    }

    @Test
    void cannotTellChangesNothingButIsNotAskedAgain() {
        Answer before = identify.answer(Question.of(demo.seen(LOOKS)));
        List<Seen> looks = new ArrayList<>(demo.seen(LOOKS));
        looks.addAll(demo.seen("table-form=unknown"));
        Answer after = identify.answer(Question.of(looks));
        alike(after, before);
        assertThat(before.next()).anyMatch(n -> n.trait().equals("table-form"));
        assertThat(after.next()).noneMatch(n -> n.trait().equals("table-form"));
    }

    private static void alike(Answer one, Answer other) {
        assertThat(one.unlisted()).isCloseTo(other.unlisted(), within(1e-12));
        for (int i = 0; i < one.candidates().size(); i++) {
            Candidate candidate = one.candidates().get(i);
            assertThat(candidate.id()).isEqualTo(other.candidates().get(i).id());
            assertThat(candidate.probability())
                    .isCloseTo(other.candidates().get(i).probability(), within(1e-12));
        }
    }

    @Test
    void silenceNeverExcludes() {
        Knowledge plain = plain();
        for (Evidence evidence : plain.weighing().evidence().values()) {
            for (String value : values(evidence)) {
                List<Seen> seen = demo.seen(evidence.trait().id() + "=" + value);
                int unlisted = plain.weighing().models().size();
                double background = evidence.likelihood(unlisted, seen, null);
                for (int e = 0; e < unlisted; e++) {
                    var model = plain.weighing().models().get(e);
                    double own = evidence.likelihood(e, seen, null);
                    assertThat(own).isPositive();
                    if (!model.traits().containsKey(evidence.trait().id())
                            && !model.traitsMany().containsKey(evidence.trait().id())) {
                        assertThat(own).isCloseTo(background, within(1e-15));
                    }
                }
            }
        }
    }

    private static List<String> values(Evidence evidence) {
        return switch (evidence) {
            case ChoiceEvidence choice -> choice.values();
            case PartsEvidence parts -> parts.values();
            case MeasureEvidence _ -> List.of("2 mm", "30 mm", "120 mm");
        };
    }

    private static Knowledge plain() {
        return Knowledge.plain(demo.catalogue(), new ExperienceReader(demo.catalogue(), demo.books()).read());
    }

    /** At every step of many horns: nothing that takes a part off while a lesser look guards a stop that is open. */
    @Test
    void aLookThatGuardsAStopComesBeforeAnythingThatCouldDoTheHarm() {
        Random random = new Random(5);
        List<String> traits = List.copyOf(demo.catalogue().traits().keySet());
        int removing = 0;
        for (int horn = 0; horn < 30; horn++) {
            List<Seen> seen = new ArrayList<>();
            for (String trait : traits) {
                boolean lesser = !demo.catalogue().traits().get(trait).cost().removesAPart();
                if (horn > 20 ? lesser && random.nextInt(40) > 0 : random.nextInt(20) < horn) {
                    seen.add(new Seen.CannotTell(trait));
                }
            }
            Question question = Question.of(seen);
            List<NextLook> next = identify.answer(question).next();
            removing += (int) next.stream().filter(n -> n.cost().removesAPart()).count();
            for (NextLook look : next) {
                if (look.cost().removesAPart()) {
                    assertThat(lesserStops(question, look.cost()))
                            .as(look.trait())
                            .isEmpty();
                }
            }
        }
        assertThat(removing).as("or nothing was tried").isPositive();
    }

    private static List<String> lesserStops(Question question, Look than) {
        return identify.quirks(question).stream()
                .filter(q -> q.probability() > 0.05 && q.probability() < 0.95)
                .filter(q -> demo.catalogue().quirks().get(q.quirk()).caution() == CautionLevel.STOP)
                .flatMap(q -> q.settledBy().stream())
                .filter(t -> demo.catalogue().traits().get(t).cost().compareTo(than) < 0)
                .filter(t -> demo.catalogue().traits().get(t).marking() == null)
                .toList();
    }

    @Test
    void aLookThatLeavesAMarkWaitsForTheOwnersYes() {
        Answer without = identify.answer(Question.of(demo.seen(LOOKS)));
        assertThat(without.next()).noneMatch(n -> n.marks() != null);
        assertThat(without.marking()).anyMatch(n -> n.trait().equals("lacquer-type") && n.marks() != null);
    }

    @Test
    void everythingFitsButTheGuards() {
        Answer answer = identify.answer(Question.of(demo.seen(
                        "family-member=alto",
                        "bell-brace=three-point",
                        "octave-mechanism=auto-slide",
                        "tone-hole-make=soldered-on",
                        "post-foot=diamond",
                        "key-guard-type=plastic-plate"))
                .asPlain());
        assertThat(answer.candidates().getFirst().id()).isEqualTo("m-halverick-drumlin-alto");
        assertThat(answer.odd()).containsExactly("key-guard-type");
    }

    @Test
    void looksThatContradictAreSaidAndNotRefused() {
        Answer answer = identify.answer(Question.of(demo.seen("tone-hole-rim=rolled", "tone-hole-rim=straight")));
        assertThat(answer.remarks()).anyMatch(r -> r.contains("tone-hole-rim was seen as rolled and as straight"));
        assertThat(answer.candidates()).isNotEmpty();
    }

    @Test
    void reasonsSayWhatEachAnswerDid() {
        Answer answer = identify.answer(Question.of(demo.seen(LOOKS)).asPlain());
        List<Reason> why = answer.candidates().getFirst().why();
        assertThat(why).hasSize(LOOKS.length);
        Reason brace = why.stream()
                .filter(r -> r.answer().equals("bell-brace=three-point"))
                .findFirst()
                .orElseThrow();
        assertThat(brace.logOdds()).isPositive();
    }

    @Test
    void comparedModelsAreToldApartByWhatPartsThem() {
        Comparison comparison = identify.compare(
                Question.of(demo.seen("family-member=alto", "key-guard-type=plastic-plate")),
                List.of("m-halverick-drumlin-alto", "m-halverick-quarterdeck-alto"));
        assertThat(comparison.differ())
                .first()
                .extracting(Comparison.Difference::trait)
                .isNotNull();
        assertThat(comparison.differ()).anyMatch(d -> d.trait().equals("tone-hole-make"));
        assertThat(comparison.look()).isNotNull();
        assertThat(comparison.odd()).containsExactly("key-guard-type");
    }

    /** (w · stated + looks) / (w + n), w by the entry's source; the horn asked about is left out. */
    @Test
    void sureHornsTeachAndTheHornAskedAboutDoesNot() {
        List<Taught> looks = List.of(
                new Taught("h-a", new Seen.OneOf("x", List.of("one"))),
                new Taught("h-b", new Seen.OneOf("x", List.of("one"))));
        Teaching teaching = new Teaching(Map.of(0, looks), new double[] {4});
        assertThat(teaching.mix(0, 0.4, null, _ -> 1)).isCloseTo((4 * 0.4 + 2) / 6, within(1e-15));
        assertThat(teaching.mix(0, 0.4, "h-a", _ -> 1)).isCloseTo((4 * 0.4 + 1) / 5, within(1e-15));
        assertThat(teaching.mix(1, 0.4, null, _ -> 1)).isEqualTo(0.4);
    }

    @Test
    void theHornsOwnFindingsAreLooks() {
        Answer answer = identify.answer(Question.of(List.of()).about("h-192"));
        assertThat(answer.candidates().getFirst().id()).isEqualTo("m-halverick-drumlin-alto");
        assertThat(answer.candidates().getFirst().why())
                .anyMatch(r -> r.answer().equals("post-foot=diamond"));
        assertThat(demo.books().find(Horn.class, "h-192")).isPresent();
    }
}
