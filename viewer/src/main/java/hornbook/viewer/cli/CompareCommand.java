package hornbook.viewer.cli;

import hornbook.catalogue.called.Called;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.identify.Comparison;
import hornbook.viewer.workshop.Workshop;
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

    @Parameters(paramLabel = "MODEL", arity = "2..*", description = "Two models or more, by id or name.")
    List<String> names = List.of();

    @Mixin
    SeeOptions see = new SeeOptions();

    private final Frame frame;

    CompareCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.reading(workshop -> {
            Comparison comparison = workshop.identify().compare(see.question(workshop), models(workshop));
            return frame.answer(comparison, out -> print(out, comparison, workshop.catalogue()));
        });
    }

    private List<String> models(Workshop workshop) {
        Called<Model> known = Called.models(workshop.catalogue());
        return names.stream().map(name -> known.find(name).id()).toList();
    }

    private static void print(PrintWriter out, Comparison comparison, Catalogue known) {
        comparison.differ().stream()
                .limit(SHOWN)
                .forEach(d -> out.printf(
                        "%.2f bit  %s: %s%n",
                        d.bits(),
                        known.title(d.trait()),
                        d.values().entrySet().stream()
                                .map(v -> known.title(v.getKey()) + " " + v.getValue())
                                .collect(Collectors.joining("; "))));
        if (comparison.look() != null) {
            out.println("look at: " + known.title(comparison.look()));
        }
        if (!comparison.odd().isEmpty()) {
            out.println("fits none of them: "
                    + comparison.odd().stream().map(known::title).collect(Collectors.joining("; ")));
        }
    }
}
