package hornbook.viewer.cli;

import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.catalogue.estimate.EstimateQuestion;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.shared.shop.BadInput;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
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
            required = true,
            description = "A task and how many; may be given again.")
    List<String> tasks = List.of();

    @Option(names = "--model", paramLabel = "M", description = "The horn's model.")
    @Nullable
    String model;

    @Option(names = "--instrument", paramLabel = "I", description = "The instrument, where the model is not known.")
    @Nullable
    String instrument;

    @Option(names = "--who", paramLabel = "WHO", description = "Initials of who works; who clocked most if left out.")
    @Nullable
    String who;

    private final Frame frame;

    EstimateCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.reading(workshop -> {
            List<TaskCount> asked = tasks.stream().map(EstimateCommand::counted).toList();
            EstimateAnswer answer = workshop.estimate().estimate(new EstimateQuestion(asked, model, instrument, who));
            return frame.answer(answer, out -> print(out, answer));
        });
    }

    private static TaskCount counted(String text) {
        int colon = text.indexOf(':');
        String task = colon < 0 ? text : text.substring(0, colon);
        try {
            int count = colon < 0 ? 1 : Integer.parseInt(text.substring(colon + 1));
            return new TaskCount(task.startsWith("task-") ? task : "task-" + task, count);
        } catch (NumberFormatException e) {
            throw new BadInput("“" + text + "” is not a task with a count: write it as task-pad-fit:24");
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
        out.println("most of the doubt: " + answer.drives());
    }

    private static String hours(long minutes) {
        return String.format("%d h %02d", minutes / 60, minutes % 60);
    }
}
