package hornbook.catalogue.diagnose;

import hornbook.catalogue.diagnose.CheckOrder.Choice;
import hornbook.catalogue.diagnose.DiagnoseAnswer.CauseLine;
import hornbook.catalogue.diagnose.DiagnoseAnswer.FaultLine;
import hornbook.catalogue.diagnose.DiagnoseAnswer.FoundLine;
import hornbook.catalogue.diagnose.DiagnoseAnswer.NextCheck;
import hornbook.catalogue.diagnose.Suspects.Suspect;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Cause;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Puts the answer together from the suspects and what the checks said. */
final class Answering {
    /** So sure, after a check said yes, that the cure costs less than looking on (from memory). */
    private static final double SURE = 0.8;

    private static final String KEY_COMES_OFF = "key off";

    private final Suspects suspects;
    private final Map<String, Boolean> answers;
    private final Set<String> passed;
    private final Cures cures;
    private final CheckTools tools;
    private final Map<String, Double> odds;
    private final List<String> likeliestFirst;
    private final double rest;
    private final List<Choice> order;
    private final Set<String> ready = new HashSet<>();

    Answering(Suspects suspects, Map<String, Boolean> answers, Set<String> passed, Catalogue catalogue) {
        this.suspects = suspects;
        this.answers = answers;
        this.passed = passed;
        this.cures = new Cures(catalogue);
        this.tools = new CheckTools(catalogue);
        this.odds = Odds.after(suspects.prior(), answers);
        this.likeliestFirst = odds.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder()))
                .map(Map.Entry::getKey)
                .toList();
        this.rest = 1 - odds.values().stream().mapToDouble(p -> p).sum();
        answers.keySet().forEach(check -> {
            String setUp = suspect(check).cause().setUp();
            if (setUp != null) {
                ready.add(setUp);
            }
        });
        this.order = CheckOrder.of(open(), ready);
    }

    static DiagnoseAnswer notUnderstood(String symptom, List<String> nearest) {
        return new DiagnoseAnswer(
                symptom,
                List.of(),
                List.of(),
                1,
                Advice.ASK,
                "these words are read as no symptom that is known here",
                null,
                List.of(),
                0,
                0,
                null,
                0,
                List.of(),
                List.of(),
                nearest);
    }

    DiagnoseAnswer answer(String symptom, int fromJobs, List<FoundLine> found, List<String> apart) {
        Advice advice = advice();
        boolean looking = advice == Advice.CHECK;
        double find = looking ? CheckOrder.minutes(checks(), rest + asked(), ready) : 0;
        return new DiagnoseAnswer(
                symptom,
                faults(),
                likeliestFirst.stream().map(this::line).toList(),
                rest,
                advice,
                why(advice),
                looking ? next(order.getFirst()) : null,
                looking ? checks().stream().skip(1).map(Check::id).toList() : List.of(),
                find,
                find + cureMinutes(advice),
                advice == Advice.ASK ? null : cures.of(suspect(likeliestFirst.getFirst())),
                fromJobs,
                found,
                remarks(fromJobs, apart),
                List.of());
    }

    private Suspect suspect(String cause) {
        return Objects.requireNonNull(suspects.causes().get(cause));
    }

    private double chance(String cause) {
        return odds.getOrDefault(cause, 0.0);
    }

    private List<Check> open() {
        return suspects.causes().values().stream()
                .map(Suspect::cause)
                .filter(cause -> !asked(cause.id()))
                .map(cause -> new Check(
                        cause.id(), chance(cause.id()), cause.checkMinutes(), cause.setUp(), cause.setUpMinutes()))
                .toList();
    }

    private List<Check> checks() {
        return order.stream().map(Choice::check).toList();
    }

    private boolean asked(String cause) {
        return answers.containsKey(cause) || passed.contains(cause);
    }

    /** The chance of what was asked already or cannot be: no further check finds it. */
    private double asked() {
        return odds.keySet().stream()
                .filter(this::asked)
                .mapToDouble(this::chance)
                .sum();
    }

    private List<FaultLine> faults() {
        return suspects.faults().entrySet().stream()
                .map(f -> new FaultLine(
                        f.getKey(),
                        suspects.causes().values().stream()
                                .filter(s -> s.fault().id().equals(f.getKey()))
                                .findFirst()
                                .orElseThrow()
                                .fault()
                                .title(),
                        f.getValue()))
                .sorted(Comparator.comparingDouble(FaultLine::probability).reversed())
                .toList();
    }

    private CauseLine line(String id) {
        Suspect suspect = suspect(id);
        return new CauseLine(
                id,
                suspect.cause().text(),
                suspect.fault().id(),
                chance(id),
                answers.get(id),
                suspects.jobs().getOrDefault(id, 0));
    }

    private Advice advice() {
        String likeliest = likeliestFirst.getFirst();
        boolean saidYes = answers.getOrDefault(likeliest, false);
        if (saidYes && chance(likeliest) >= SURE) {
            return Advice.CURE;
        }
        return order.isEmpty() || yeses() > 1 ? Advice.ASK : Advice.CHECK;
    }

    private long yeses() {
        return answers.values().stream().filter(yes -> yes).count();
    }

    private String why(Advice advice) {
        Cause likeliest = suspect(likeliestFirst.getFirst()).cause();
        return switch (advice) {
            case CHECK -> "the most chance of finding it for a minute's work";
            case CURE -> likeliest.text() + ": cure that, then play the horn again before looking further";
            case ASK -> stuck();
        };
    }

    private String stuck() {
        if (yeses() > 1) {
            return "more than one check says yes: there may be two faults; cure the quicker one, play again, and begin"
                    + " anew";
        }
        if (yeses() == 1) {
            return "one check says yes against the odds: make it once more, or ask somebody";
        }
        String seen = answers.isEmpty()
                ? "no check could be made"
                : passed.isEmpty() ? "every check says no" : "every check that could be made says no";
        return seen + ": stop here, write down what was seen, and ask somebody or look wider";
    }

    private NextCheck next(Choice choice, Cause cause, boolean ready, double probability) {
        @Nullable String setUp = ready ? null : cause.setUp();
        return new NextCheck(
                cause.id(),
                cause.check(),
                cause.checkMinutes(),
                setUp,
                setUp == null ? 0 : cause.setUpMinutes(),
                probability,
                choice.worth(),
                cause.setUp() != null && cause.setUp().startsWith(KEY_COMES_OFF),
                tools.of(cause));
    }

    private NextCheck next(Choice choice) {
        Cause cause = suspect(choice.check().id()).cause();
        boolean isReady = cause.setUp() == null || ready.contains(cause.setUp());
        return next(choice, cause, isReady, chance(cause.id()));
    }

    private double cureMinutes(Advice advice) {
        if (advice != Advice.CHECK) {
            return advice == Advice.CURE ? cures.minutes(suspect(likeliestFirst.getFirst())) : 0;
        }
        double listed = 1 - rest;
        return odds.entrySet().stream()
                        .mapToDouble(c -> c.getValue() * cures.minutes(suspect(c.getKey())))
                        .sum()
                / listed;
    }

    private List<String> remarks(int fromJobs, List<String> apart) {
        List<String> remarks = new ArrayList<>();
        if (!apart.isEmpty()) {
            remarks.add("these words may tell of more than one fault (" + String.join("; ", apart)
                    + "): ask one at a time");
        }
        remarks.add("this order takes the fewest minutes on average if exactly one of these is wrong and no check errs;"
                + " minutes and odds are from memory");
        if (fromJobs == 0) {
            remarks.add("no closed job here had such a complaint or finding: the odds are the book's alone");
        }
        return remarks;
    }
}
