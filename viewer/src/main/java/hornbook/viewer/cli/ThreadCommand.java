package hornbook.viewer.cli;

import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.Limits;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.BadInput;
import hornbook.shared.thread.ThreadAnswer;
import hornbook.shared.thread.ThreadQuestionReader;
import hornbook.shared.thread.ThreadWords;
import hornbook.shared.thread.WhichThread;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What thread is this? */
@Command(
        name = "thread",
        header = "Which standard thread a screw or a hole has, from what was measured.",
        footer = "hornbook thread --diameter 2.95 --turns 5 --over 3.0")
final class ThreadCommand implements Callable<Integer> {
    @Option(
            names = "--diameter",
            paramLabel = "L",
            description = "Over the crests of a screw: 2.95, .116 in, 2.95±0.02 mm.")
    @Nullable
    String diameter;

    @Option(names = "--hole", paramLabel = "L", description = "Through the crests of a hole, instead of a diameter.")
    @Nullable
    String hole;

    @Option(names = "--pitch", paramLabel = "L", description = "From crest to crest.")
    @Nullable
    String pitch;

    @Option(names = "--tpi", paramLabel = "N", description = "Threads per inch, by gauge.")
    @Nullable
    String tpi;

    @Option(names = "--turns", paramLabel = "N", description = "How many threads lie in the length given with --over.")
    @Nullable
    String turns;

    @Option(names = "--over", paramLabel = "L", description = "The length that --turns were counted over.")
    @Nullable
    String over;

    @Option(names = "--form", paramLabel = "DEGREES", description = "Angle of the thread, where it was looked at.")
    @Nullable
    String form;

    @Option(
            names = "--percent",
            paramLabel = "P",
            description = "Percent of full thread the tap drill aims at; 75 if left out.")
    @Nullable
    String percent;

    @Option(names = "--wall", paramLabel = "L", description = "Metal round a stripped hole.")
    @Nullable
    String wall;

    @Option(names = "--through", paramLabel = "L", description = "A rod or tube that the screw has to pass.")
    @Nullable
    String through;

    private final Frame frame;

    ThreadCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        StandardSizes tables = StandardSizes.load();
        ThreadWords words = new ThreadWords(
                Optional.ofNullable(diameter),
                Optional.ofNullable(hole),
                Optional.ofNullable(pitch),
                Optional.ofNullable(tpi),
                Optional.ofNullable(turns),
                Optional.ofNullable(over),
                Optional.ofNullable(form),
                Optional.ofNullable(percent),
                Optional.ofNullable(wall),
                Optional.ofNullable(through));
        var read = new ThreadQuestionReader(tables.reader(), LengthUnit.MILLIMETRE).read(words);
        read.refusal().ifPresent(reason -> {
            throw new BadInput(reason);
        });
        ThreadAnswer answer = new WhichThread(tables).answer(read.found().orElseThrow());
        return answer.threads().isEmpty()
                ? frame.nothing(answer, out -> print(out, answer))
                : frame.answer(answer, out -> print(out, answer));
    }

    private static void print(PrintWriter out, ThreadAnswer answer) {
        answer.threads()
                .forEach(t -> out.printf(
                        "%4.0f %%  %-14s %s  %s pitch%s%n",
                        100 * t.probability(),
                        t.designation(),
                        t.standard(),
                        t.pitch(),
                        t.note().map(n -> "  (" + n + ")").orElse("")));
        if (answer.threads().isEmpty()) {
            out.println("no standard thread fits"
                    + (answer.nearest().isEmpty() ? "" : "; nearest: " + String.join(", ", answer.nearest())));
        }
        answer.stripped()
                .forEach(s -> out.printf(
                        "the hole may have been %s, %.0f %% of its thread left%n", s.designation(), s.percentLeft()));
        answer.apart()
                .forEach(a -> out.println(a.one() + " or " + a.other() + ": " + a.look()
                        + (a.withGaugeInHand() ? "" : " (calliper and pitch gauge cannot tell)")));
        answer.limits()
                .forEach(l -> out.println(l.designation() + " " + l.fit() + ": screw " + range(l.screwMajor())
                        + ", hole " + range(l.holeMinor())));
        answer.tapDrills()
                .forEach(d -> out.printf(
                        "%s: drill %s (%s), %.0f %% of thread%n",
                        d.designation(), d.drill(), d.diameter(), d.percent()));
        answer.lookAlikes().forEach(l -> out.println("screw " + l.screw() + " in hole " + l.hole() + ": " + l.note()));
        answer.nextUp()
                .forEach(n -> out.printf(
                        "next up %s: %s, %.0f %% of thread; %s%n",
                        n.designation(), n.drill().orElse("tap as it is"), n.percent(), n.note()));
        answer.notUp().forEach(n -> out.println("not " + n.designation() + ": " + n.why()));
    }

    private static String range(Limits limits) {
        return limits.least().inMillimetres() + " to " + limits.most().inMillimetres();
    }
}
