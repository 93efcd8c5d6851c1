package hornbook.viewer.cli;

import hornbook.catalogue.identify.Comparison;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Where do these models differ? */
@Command(
        name = "compare",
        header = "Where models differ, the look that parts them, and what of this horn fits none.",
        footer = "hornbook compare m-brennhage-type-5-alto m-moradol-series-18-alto")
final class CompareCommand implements Callable<Integer> {
    private static final int SHOWN = 12;

    @Parameters(paramLabel = "MODEL", arity = "2..*", description = "Two models or more, by id.")
    List<String> ids = List.of();

    @Mixin
    SeeOptions see = new SeeOptions();

    private final Frame frame;

    CompareCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.reading(workshop -> {
            Comparison comparison = workshop.identify().compare(see.question(workshop), ids);
            return frame.answer(comparison, out -> print(out, comparison));
        });
    }

    private static void print(PrintWriter out, Comparison comparison) {
        comparison.differ().stream()
                .limit(SHOWN)
                .forEach(d -> out.printf(
                        "%.2f bit  %s: %s%n",
                        d.bits(),
                        d.trait(),
                        d.values().entrySet().stream()
                                .map(v -> v.getKey() + " " + v.getValue())
                                .collect(Collectors.joining("; "))));
        if (comparison.look() != null) {
            out.println("look at " + comparison.look());
        }
        if (!comparison.odd().isEmpty()) {
            out.println("fits none of them: " + String.join(", ", comparison.odd()));
        }
    }
}
