package hornbook.viewer.cli;

import hornbook.shared.shop.Counted;
import hornbook.shared.store.Check;
import hornbook.shared.store.Problem;
import hornbook.shared.store.Repair;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Is everything in the shop what was once put there? */
@Command(
        name = "check",
        header = "Looks the whole shop over: is everything in it what was once put there?",
        footer = "hornbook check")
final class CheckCommand implements Callable<Integer> {
    @Option(
            names = "--repair",
            description = "Mend what can be mended without guessing; the file as it was is kept aside.")
    boolean repair;

    private final Frame frame;

    CheckCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        Check.Report report = repair ? new Repair(frame.shop()).run() : new Check(frame.shop()).run();
        frame.answer(report, out -> {
            report.done().forEach(done -> out.println("mended: " + done));
            report.problems().stream().map(Problem::line).forEach(out::println);
            out.println(
                    report.ok() ? "all is well" : Counted.of(report.problems().size(), "problem"));
        });
        return report.ok() ? ExitCode.DONE : ExitCode.SHOP_UNAVAILABLE;
    }
}
