package hornbook.viewer.cli;

import hornbook.catalogue.called.Called;
import hornbook.catalogue.diagnose.DiagnoseAnswer;
import hornbook.catalogue.diagnose.DiagnoseAnswer.CauseLine;
import hornbook.catalogue.diagnose.DiagnoseAnswer.Cure;
import hornbook.catalogue.diagnose.DiagnoseAnswer.NextCheck;
import hornbook.catalogue.diagnose.DiagnoseAnswer.TaskLine;
import hornbook.catalogue.diagnose.DiagnoseAnswer.ToolLine;
import hornbook.catalogue.diagnose.DiagnoseQuestion;
import hornbook.shared.job.JobCard;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Counted;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is wrong, and what to look at first? */
@Command(
        name = "diagnose",
        header = "What may be wrong, in a player's words; what to check next, and what its answer says.",
        footer = "hornbook diagnose low notes burble --answer f-low-warble.1=no")
final class DiagnoseCommand implements Callable<Integer> {
    private static final int FOUND_SHOWN = 5;
    private static final String CANNOT = "cannot";
    private static final Set<String> WORDS = Set.of("yes", "no", CANNOT);

    @Parameters(
            arity = "0..*",
            paramLabel = "SYMPTOM",
            description = "In the player's words, or a fault's id; the complaint of --job if left out.")
    List<String> symptom = List.of();

    @Option(names = "--job", paramLabel = "JOB", description = "The job it is for: its complaint, its horn's model.")
    @Nullable
    String job;

    @Option(
            names = "--answer",
            paramLabel = "CHECK=yes|no|cannot",
            description = "What a check said, by its id; cannot where it did not tell. May be given again.")
    List<String> answers = List.of();

    @Option(names = "--model", paramLabel = "M", description = "The horn's model: what its kin had counts for more.")
    @Nullable
    String model;

    private final Frame frame;

    DiagnoseCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.reading(workshop -> {
            DiagnoseAnswer answer = workshop.diagnose().answer(question(workshop));
            return answer.causes().isEmpty()
                    ? frame.nothing(answer, out -> printNearest(out, answer))
                    : frame.answer(answer, out -> print(out, answer));
        });
    }

    private DiagnoseQuestion question(Workshop workshop) {
        String words = String.join(" ", symptom);
        String named = model == null
                ? null
                : Called.models(workshop.catalogue()).find(model).id();
        if (job == null) {
            return new DiagnoseQuestion(words, answered(), passed(), named);
        }
        JobCard card = workshop.jobs()
                .job(job)
                .orElseThrow(() -> new BadInput("there is no job " + job + ": look it up with “hornbook job list”"));
        boolean placed = workshop.catalogue().models().containsKey(card.model());
        return new DiagnoseQuestion(
                words.isBlank() ? card.complaint() : words,
                answered(),
                passed(),
                named == null && placed ? card.model() : named);
    }

    private Map<String, Boolean> answered() {
        Map<String, Boolean> said = new LinkedHashMap<>();
        said().forEach((check, word) -> {
            if (!word.equals(CANNOT)) {
                said.put(check, word.equals("yes"));
            }
        });
        return said;
    }

    private Set<String> passed() {
        Map<String, String> said = said();
        said.values().removeIf(word -> !word.equals(CANNOT));
        return said.keySet();
    }

    private Map<String, String> said() {
        Map<String, String> said = new LinkedHashMap<>();
        for (String answer : answers) {
            int equals = answer.indexOf('=');
            String word = answer.substring(equals + 1);
            if (equals < 1 || !WORDS.contains(word)) {
                throw new BadInput("“" + answer + "” is not an answer: write it as f-low-warble.1=yes, =no or =cannot");
            }
            said.put(answer.substring(0, equals), word);
        }
        return said;
    }

    private static void printNearest(PrintWriter out, DiagnoseAnswer answer) {
        out.println(
                "“" + answer.symptom() + "” is read as no symptom that is known here; perhaps one of these is meant:");
        answer.nearest().forEach(title -> out.println("  " + title));
    }

    private void print(PrintWriter out, DiagnoseAnswer answer) {
        out.println("Read as "
                + answer.faults().stream()
                        .map(f -> f.title() + (answer.faults().size() > 1 ? percent(f.probability()) : ""))
                        .collect(Collectors.joining("; ")));
        answer.causes().forEach(cause -> print(out, cause));
        out.printf("  %3.0f %%  something else%n", 100 * answer.somethingElse());
        if (answer.next() != null) {
            print(out, answer.next());
            if (!answer.then().isEmpty()) {
                out.println("then  "
                        + answer.then().stream().map(id -> cause(answer, id)).collect(Collectors.joining("; ")));
            }
            out.printf(
                    "about %.0f min to find it, %.0f to find and cure it%n",
                    answer.minutesToFind(), answer.minutesToCure());
        } else {
            out.println(answer.advice().word().toUpperCase(Locale.ROOT) + "  " + answer.why());
        }
        if (answer.cure() != null) {
            print(out, answer.cure(), cause(answer, answer.cure().cause()));
        }
        found(out, answer);
        answer.remarks().forEach(remark -> out.println("! " + remark));
    }

    private static String percent(double chance) {
        return String.format(" (%.0f %%)", 100 * chance);
    }

    private static void print(PrintWriter out, CauseLine cause) {
        String said = cause.answer() == null ? "" : cause.answer() ? ", its check says yes" : ", its check says no";
        String jobs = cause.jobs() == 0 ? "" : ", " + Counted.of(cause.jobs(), "job") + " here";
        out.printf("  %3.0f %%  %s  (%s%s%s)%n", 100 * cause.probability(), cause.text(), cause.id(), said, jobs);
    }

    private static void print(PrintWriter out, NextCheck next) {
        out.println("NEXT  " + next.question());
        String ready = next.setUp() == null
                ? ""
                : String.format(", and %.0f min to get ready: %s", next.setUpMinutes(), next.setUp());
        out.printf("      %.0f min%s; answer with --answer %s=yes, =no or =cannot%n", next.minutes(), ready, next.id());
        if (!next.tools().isEmpty()) {
            out.println(
                    "      with: " + next.tools().stream().map(ToolLine::title).collect(Collectors.joining("; ")));
        }
        if (next.needsYes()) {
            out.println("      a key comes off: not before the owner has said yes to the quote");
        }
    }

    private static String cause(DiagnoseAnswer answer, String id) {
        return answer.causes().stream()
                .filter(cause -> cause.id().equals(id))
                .map(CauseLine::text)
                .findFirst()
                .orElse(id);
    }

    private void print(PrintWriter out, Cure cure, String cause) {
        out.printf(
                "cure where %s: %s (%.0f to %.0f min a %s)%n",
                cause, cure.remedy(), cure.minutesLow(), cure.minutesHigh(), cure.per());
        if (!cure.tasks().isEmpty()) {
            out.println("      hornbook job plan " + (job == null ? "JOB" : job) + " "
                    + cure.tasks().stream().map(TaskLine::id).collect(Collectors.joining(" "))
                    + ", then estimate --job "
                    + (job == null ? "JOB" : job));
        }
        cure.quirks().forEach(q -> out.println(q.caution().word() + "  " + q.title() + ": " + q.whatToDo()));
        cure.cautions().forEach(c -> out.println("caution  " + c.title() + ": " + c.text()));
    }

    private static void found(PrintWriter out, DiagnoseAnswer answer) {
        if (answer.fromJobs() > 0) {
            out.println("found on " + answer.fromJobs() + " closed jobs with such a complaint or finding: "
                    + answer.foundHere().stream()
                            .limit(FOUND_SHOWN)
                            .map(f -> f.title() + " " + f.jobs())
                            .collect(Collectors.joining(", ")));
        }
    }
}
