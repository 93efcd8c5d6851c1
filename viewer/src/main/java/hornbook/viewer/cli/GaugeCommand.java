package hornbook.viewer.cli;

import hornbook.shared.gauge.GaugeAnswer;
import hornbook.shared.gauge.GaugeQuestion;
import hornbook.shared.gauge.SizeForms;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.BadInput;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** A size in every form. */
@Command(
        name = "gauge",
        header = "A size in every form: mm, inch, drill, wire and sheet gauge, pad, with the nearest on either side.",
        footer = "hornbook gauge .108 in")
final class GaugeCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "SIZE",
            arity = "1..*",
            description = "As you write it: 2.74 mm, .108, 7/64 in, #40, 18 AWG, 3-48.")
    List<String> words = List.of();

    private final Frame frame;

    GaugeCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        String text = String.join(" ", words);
        if (text.contains("..")) {
            throw new BadInput(
                    "“" + text + "” is a range, and one size is wanted: write it as 2.74 mm or 2.74±0.02 mm");
        }
        var read = new SizeForms(StandardSizes.load()).answer(GaugeQuestion.of(text));
        GaugeAnswer answer =
                read.found().orElseThrow(() -> new BadInput(read.refusal().orElse("the size cannot be read")));
        return frame.answer(answer, out -> print(out, answer));
    }

    private static void print(PrintWriter out, GaugeAnswer answer) {
        out.println(answer.size() + "  (" + answer.thou() + " thou)");
        answer.thread()
                .ifPresent(t -> out.println(t.designation() + ", " + t.standard() + ": pitch " + t.pitch()
                        + ", effective " + t.pitchDiameter() + ", hole " + t.minorOfHole()));
        answer.scales()
                .forEach(s -> out.printf(
                        "%-24s %s%n",
                        s.series(),
                        Stream.of(s.below(), s.at(), s.above())
                                .flatMap(Optional::stream)
                                .map(GaugeCommand::near)
                                .collect(Collectors.joining("   "))));
        answer.within().forEach(n -> out.println("within: " + near(n)));
        answer.pad().ifPresent(p -> out.println("pad for a cup of this inside: " + p.size()));
    }

    private static String near(GaugeAnswer.Near near) {
        String error = near.error().nanometres() == 0 ? "exact" : near.error().inMillimetres();
        return near.name() + " (" + error + ")";
    }
}
