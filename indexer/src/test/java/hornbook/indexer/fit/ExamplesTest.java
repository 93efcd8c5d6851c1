package hornbook.indexer.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.catalogue.entry.Catalogue;
import hornbook.indexer.fit.Refused.Reason;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The worked examples of the project's trade notes (fit_examples.csv: common practice, limits and minutes from memory;
 * the figures were recomputed there by a script). Lot, operations, minutes, charge, other plans and refusals.
 */
class ExamplesTest {
    private static final Catalogue CATALOGUE = Catalogue.shipped();
    private static final Pattern TOTAL = Pattern.compile("^(\\w): (.*) = ([\\d.]+) \\+ ([\\d.]+) = ([\\d.]+)$");
    private static final Pattern OVER = Pattern.compile("over-limit: (op-[a-z-]+) ([a-z]+) by ([\\d.]+)");

    /** Two pieces in one plan, a rod beside the key: another question to this planner. */
    private static final Map<String, List<String>> NOT_ONE_PIECE = Map.of("fit-04", List.of("R"));

    /**
     * What a row takes for granted: in fit-02 the thread is 7 mm long for the bar too; fit-17 and fit-18 try one screw a
     * lot, and their titles say which thread was stripped.
     */
    private static final Map<String, List<String>> ALSO = Map.of(
            "fit-02", List.of("tlen=7"),
            "fit-17", List.of("was=M4x0.7"),
            "fit-18", List.of("was=3-48 UNC"));

    private static final Map<String, String> POST_SCREWS = Map.of("A", "3-48 UNC", "B", "4-48 UNF", "C", "M2.6x0.45");

    @TempDir
    static Path folder;

    static Stream<Example> rows() throws Exception {
        return Example.all().stream();
    }

    private static final Map<String, FitAnswer> ANSWERED = new HashMap<>();

    private static FitAnswer answer(Example example, boolean reserve) throws Exception {
        FitAnswer known = ANSWERED.get(example.get("id") + reserve);
        if (known == null) {
            known = asked(example, reserve);
            ANSWERED.put(example.get("id") + reserve, known);
        }
        return known;
    }

    private static FitAnswer asked(Example example, boolean reserve) throws Exception {
        Map<String, FitAnswer> parts = new LinkedHashMap<>();
        if (example.get("id").equals("fit-17") || example.get("id").equals("fit-18")) {
            for (Map.Entry<String, Map<String, String>> lot : example.lots().entrySet()) {
                String screw = lot.getValue().getOrDefault("screw", POST_SCREWS.get(lot.getKey()));
                parts.put(lot.getKey(), answer(example, List.of(lot.getKey()), screw, reserve));
            }
        } else {
            parts.put("all", answer(example, List.of(), null, reserve));
        }
        List<FitPlan> plans =
                parts.values().stream().flatMap(a -> a.plans().stream()).toList();
        List<Refused> refused =
                parts.values().stream().flatMap(a -> a.refused().stream()).toList();
        return new FitAnswer("", "", List.of(), plans, refused, List.of(), List.of());
    }

    private static FitAnswer answer(Example example, List<String> lots, String screw, boolean reserve)
            throws Exception {
        try (Books books = Books.open(Files.createTempDirectory(folder, "shop"), Access.WRITE)) {
            example.into(books, lots);
            FitQuestion question = example.question(screw, ALSO.getOrDefault(example.get("id"), List.of()), reserve);
            return new Fit(books, CATALOGUE, StandardSizes.load().reader()).answer(question);
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theBestPlanIsTheOneWorkedOut(Example example) throws Exception {
        FitAnswer answer = answer(example, false);
        if (example.get("best_lot").equals("none")) {
            assertThat(answer.plans()).isEmpty();
            return;
        }
        FitPlan best = answer.plans().stream()
                .filter(p -> !other(example, p.lot()))
                .findFirst()
                .orElseThrow();
        assertThat(best.lot()).isEqualTo(example.get("best_lot"));
        assertThat(operations(best)).isEqualTo(example.steps());
        assertThat(best.minutes()).isCloseTo(number(example.get("minutes")), within(1e-9));
        assertThat(best.charge()).isCloseTo(number(example.get("spoil_charge")), within(1e-9));
        assertThat(best.total()).isCloseTo(number(example.get("total")), within(1e-9));
        assertThat(best.askFirst()).isEmpty();
    }

    /** Only in the rows that try one screw a lot does another plan come from another question. */
    private static boolean other(Example example, String lot) {
        return example.get("id").equals("fit-17") && lot.equals("E");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void soAreTheOtherPlans(Example example) throws Exception {
        FitAnswer answer = answer(example, false);
        for (String plan : example.get("other_plans").split(" ## ")) {
            Matcher total = TOTAL.matcher(plan.strip());
            if (total.matches() && !notOnePiece(example, total.group(1))) {
                FitPlan found = answer.plans().stream()
                        .filter(p -> p.lot().equals(total.group(1)))
                        .findFirst()
                        .orElseThrow();
                assertThat(operations(found)).isEqualTo(Example.operations(total.group(2)));
                assertThat(found.minutes()).isCloseTo(number(total.group(3)), within(1e-9));
                assertThat(found.charge()).isCloseTo(number(total.group(4)), within(1e-9));
            }
        }
    }

    private static boolean notOnePiece(Example example, String lot) {
        return NOT_ONE_PIECE.getOrDefault(example.get("id"), List.of()).contains(lot);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void andTheRefusals(Example example) throws Exception {
        FitAnswer answer = answer(example, false);
        Map<String, String> expected = example.refused();
        List<String> refused = answer.refused().stream()
                .map(Refused::lot)
                .filter(lot -> !notOnePiece(example, lot))
                .sorted()
                .toList();
        assertThat(refused).isEqualTo(expected.keySet().stream().sorted().toList());
        answer.refused().stream()
                .filter(no -> expected.containsKey(no.lot()))
                .forEach(no -> assertReason(no, expected.get(no.lot())));
    }

    private static void assertReason(Refused no, String expected) {
        String dimension = expected.replaceFirst("^[a-z-]+: ", "").replaceFirst("[ (].*", "");
        Matcher over = OVER.matcher(expected);
        if (over.find()) {
            assertThat(no.reason()).as(expected).isEqualTo(Reason.OVER_LIMIT);
            assertThat(no.why()).startsWith(over.group(2));
            // fit-22 says 1.6 for one hole, "by 0.8 even with both": both are tried here.
            assertThat(no.why()).contains(over.group(3).equals("1.6") ? "0.8 too much" : over.group(3) + " too much");
        } else if (expected.startsWith("too-small")) {
            assertThat(no.reason()).as(expected).isEqualTo(Reason.TOO_SMALL);
            assertThat(no.why()).startsWith(dimension);
        } else if (expected.startsWith("differs")) {
            assertThat(no.reason()).as(expected).isIn(Reason.DIFFERS, Reason.NOT_ALLOWED, Reason.TOO_LARGE);
            assertThat(no.why()).startsWith(dimension);
        } else if (expected.matches("(reserve|keepsake|hazard).*")) {
            assertThat(no.reason().name()).isEqualToIgnoringCase(expected.replaceFirst("\\W.*", ""));
        } else {
            assertThat(no.reason()).as(expected).isEqualTo(Reason.NOT_ALLOWED);
        }
    }

    /** The figures that two refusals name in brackets: what the reserve would cost. */
    @Test
    void theReserveComesFirstOnceItIsAskedFor() throws Exception {
        for (Example example : Example.all()) {
            if (example.get("id").equals("fit-06") || example.get("id").equals("fit-20")) {
                FitPlan first = answer(example, true).plans().getFirst();
                assertThat(first.reserve()).isTrue();
                assertThat(first.total()).isEqualTo(example.get("id").equals("fit-06") ? 0.25 : 0.0);
                assertThat(first.left()).isEqualTo(example.get("id").equals("fit-06") ? 0 : 1);
            }
        }
    }

    private static List<String> operations(FitPlan plan) {
        return plan.steps().stream().map(FitStep::operation).sorted().toList();
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }
}
