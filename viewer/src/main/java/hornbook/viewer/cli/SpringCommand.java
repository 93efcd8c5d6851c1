package hornbook.viewer.cli;

import hornbook.catalogue.spring.SpringAnswer;
import hornbook.catalogue.spring.SpringQuestion;
import hornbook.shared.measure.Length;
import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.BadInput;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Which spring, from a measured old one? */
@Command(
        name = "spring",
        header = "Which spring from a measured old one: how stiff, what another wire or length does in per cent.",
        footer = "hornbook spring --diameter 1.00 --length 45 --to 1.05 --key \"low C\" --instrument alto")
final class SpringCommand implements Callable<Integer> {
    @Option(names = "--diameter", paramLabel = "L", description = "Wire of a needle spring, away from the bend.")
    @Nullable
    String diameter;

    @Option(names = "--width", paramLabel = "L", description = "Width of a flat spring.")
    @Nullable
    String width;

    @Option(names = "--thickness", paramLabel = "L", description = "Thickness of a flat spring.")
    @Nullable
    String thickness;

    @Option(names = "--length", paramLabel = "L", required = true, description = "Free length, post face to cradle.")
    String length = "";

    @Option(names = "--to", paramLabel = "L", description = "Another wire, or another thickness of a flat spring.")
    @Nullable
    String to;

    @Option(names = "--to-length", paramLabel = "L", description = "Another length.")
    @Nullable
    String toLength;

    @Option(names = "--hole", paramLabel = "L", description = "The post hole the wire goes into.")
    @Nullable
    String hole;

    @Option(names = "--key", paramLabel = "WORDS", description = "The keys it serves: low C, upper stack, palm.")
    @Nullable
    String key;

    @Option(
            names = "--instrument",
            paramLabel = "I",
            description = "soprano, alto, tenor or baritone; alto if left out.")
    String instrument = "alto";

    private final Frame frame;

    SpringCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        SizeReader reader = StandardSizes.load().reader();
        SpringQuestion question = new SpringQuestion(
                size(reader, "--diameter", diameter),
                size(reader, "--width", width),
                size(reader, "--thickness", thickness),
                size(reader, "--length", length).orElseThrow(),
                size(reader, "--to", to),
                size(reader, "--to-length", toLength),
                size(reader, "--hole", hole),
                Optional.ofNullable(key),
                instrument);
        return frame.reading(workshop -> {
            SpringAnswer answer = workshop.springs().answer(question);
            return frame.answer(answer, out -> print(out, answer));
        });
    }

    private static Optional<Length> size(SizeReader reader, String option, @Nullable String text) {
        return Optional.ofNullable(text).map(written -> {
            var read = reader.length(written, LengthUnit.MILLIMETRE);
            return read.found()
                    .orElseThrow(
                            () -> new BadInput(option + ": " + read.refusal().orElse("is no size")));
        });
    }

    private static void print(PrintWriter out, SpringAnswer answer) {
        out.println("stiffness " + answer.gramsPerMm() + " g a mm at the tip (" + answer.newtonPerMm() + " N)");
        if (answer.changePercent() != null) {
            out.println("the change makes it " + percent(answer.changePercent()));
        }
        if (answer.sameStiffness() != null) {
            out.println("as stiff at the new length: " + answer.sameStiffness() + " mm");
        }
        answer.wires()
                .forEach(wire -> out.printf(
                        "  %-14s %s%s%n",
                        wire.name(),
                        percent(wire.changePercent()),
                        wire.goesIn() == null ? "" : wire.goesIn() ? "  goes into the hole" : "  not for this hole"));
        answer.usual()
                .forEach(u -> out.println("usual for " + u.keys() + ": " + u.from() + " to " + u.to()
                        + " mm; this one is " + u.stands() + " (" + u.sureness() + ")"));
        answer.remarks().forEach(remark -> out.println("mind: " + remark));
    }

    private static String percent(double percent) {
        return percent == 0 ? "the same" : Math.abs(percent) + " % " + (percent > 0 ? "stiffer" : "softer");
    }
}
