package hornbook.viewer.cli;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hornbook.catalogue.called.Called;
import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.catalogue.estimate.EstimateQuestion;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.catalogue.estimate.HonestyAnswer;
import hornbook.catalogue.estimate.Price;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Counted;
import java.io.PrintWriter;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How long will it take? */
@Command(
        name = "estimate",
        header = "How long a list of work may take, from this shop's own clocks.",
        footer = "hornbook estimate --task task-pads-out:24 --task task-pad-fit:24 --model m-brindlow-nightferry-tenor")
final class EstimateCommand implements Callable<Integer> {
    @Option(
            names = "--task",
            paramLabel = "T[:COUNT]",
            description = "A task, by name or id, and how many; may be given again. With --job beside what is planned.")
    List<String> tasks = List.of();

    @Option(names = "--model", paramLabel = "M", description = "The horn's model, by name or id.")
    @Nullable
    String model;

    @Option(names = "--instrument", paramLabel = "I", description = "The instrument, where the model is not known.")
    @Nullable
    String instrument;

    @Option(names = "--who", paramLabel = "WHO", description = "Initials of who works; who clocked most if left out.")
    @Nullable
    String who;

    @Option(names = "--honesty", description = "Hold past estimates against what the jobs took; needs no task.")
    boolean honesty;

    @Mixin
    QuoteOptions quote = new QuoteOptions();

    private final Frame frame;

    EstimateCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        if (honesty) {
            return honest();
        }
        return frame.reading(workshop -> {
            List<TaskCount> asked = quote.asked(workshop, TaskNamed.all(tasks, workshop.catalogue()));
            String of = model != null
                    ? Called.models(workshop.catalogue()).find(model).id()
                    : quote.model(workshop).orElse(null);
            String on = of == null && instrument == null
                    ? quote.instrument(workshop).orElse(null)
                    : instrument;
            EstimateAnswer time = workshop.estimate().estimate(new EstimateQuestion(asked, of, on, who));
            Priced answer = new Priced(time, quote.price(workshop, time).orElse(null));
            quote.print(frame, workshop, time, of)
                    .ifPresent(printed -> frame.say(printed.file() + "  " + Counted.of(printed.pages(), "page")));
            return frame.answer(answer, out -> print(out, answer));
        });
    }

    private int honest() {
        if (!tasks.isEmpty() || model != null || instrument != null || who != null) {
            throw new BadInput("--honesty looks at all past jobs: leave the other options out");
        }
        return frame.reading(workshop -> {
            HonestyAnswer answer = workshop.honesty().answer();
            return answer.jobs() == 0
                    ? frame.nothing(answer, out -> answer.remarks().forEach(out::println))
                    : frame.answer(answer, out -> print(out, answer));
        });
    }

    private static void print(PrintWriter out, HonestyAnswer answer) {
        answer.remarks().forEach(out::println);
        out.printf(
                "usual error, as a factor: %.2f; of the book alone: %.2f%n",
                Math.exp(Objects.requireNonNullElse(answer.logError(), 0.0)),
                Math.exp(Objects.requireNonNullElse(answer.bookLogError(), 0.0)));
        out.println("came in from  to          jobs  under P50  under P80");
        answer.over()
                .forEach(s -> out.printf(
                        "  %s  %s  %4d  %6.0f %%   %6.0f %%%n",
                        s.from(), s.to(), s.jobs(), 100 * s.underP50(), 100 * s.underP80()));
    }

    /** Time, and a price where a rate is known. */
    record Priced(
            @JsonUnwrapped EstimateAnswer time, @Nullable Price price) {}

    private static void print(PrintWriter out, Priced answer) {
        print(out, answer.time());
        Price price = answer.price();
        if (price != null) {
            out.println("from " + price.usual().toPlainString() + " to "
                    + price.upTo().toPlainString() + ", stop and ask at "
                    + price.stopLimit().toPlainString());
        }
    }

    private static void print(PrintWriter out, EstimateAnswer answer) {
        out.printf(
                "%d min as often under as over (%s), %d min in four of five (%s)%n",
                answer.p50Min(), hours(answer.p50Min()), answer.p80Min(), hours(answer.p80Min()));
        out.printf(
                "the book says %d min; from %d jobs, %d on the instrument, %d of the make, %d of the model%n",
                answer.bookMin(),
                answer.fromJobs().all(),
                answer.fromJobs().instrument(),
                answer.fromJobs().make(),
                answer.fromJobs().model());
        answer.remarks().forEach(remark -> out.println("! " + remark));
        answer.lines()
                .forEach(line -> out.printf(
                        "  %5d %5d min  %3.0f %%  %s%s%n",
                        line.p50Min(),
                        line.p80Min(),
                        100 * line.share(),
                        line.title(),
                        line.count() > 1 ? " x" + line.count() : ""));
        answer.lines().stream()
                .filter(line -> line.task().equals(answer.drives()))
                .findFirst()
                .ifPresent(line -> out.println("most of the doubt: " + line.title()));
    }

    private static String hours(long minutes) {
        return String.format("%d h %02d", minutes / 60, minutes % 60);
    }
}
