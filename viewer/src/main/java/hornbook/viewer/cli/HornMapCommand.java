package hornbook.viewer.cli;

import hornbook.catalogue.hornmap.CupLine;
import hornbook.catalogue.hornmap.HornMap;
import hornbook.shared.shop.BadInput;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The horn cup by cup. */
@Command(
        name = "map",
        header = "Shows a horn cup by cup: pads, insides, openings, what its keys turn on.",
        footer = "hornbook horn map h-197")
final class HornMapCommand implements Callable<Integer> {
    @Parameters(paramLabel = "HORN", arity = "0..1", description = "Its number; left out, the cups of a model.")
    @Nullable
    String id;

    @Option(names = "--as", paramLabel = "MODEL", description = "As one of that model, which it may be.")
    @Nullable
    String model;

    private final Frame frame;

    HornMapCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        if (id == null && model == null) {
            throw new BadInput("say which horn: its number, or --as with a model");
        }
        String name = Objects.requireNonNullElse(model, Objects.requireNonNullElse(id, ""));
        return frame.showing(model == null ? "horn" : "model", name, this::map, HornMapCommand::print);
    }

    private Optional<HornMap> map(Workshop shop) {
        return model == null
                ? shop.hornMaps().horn(Objects.requireNonNull(id))
                : shop.hornMaps().as(id, model);
    }

    private static void print(PrintWriter out, HornMap map) {
        out.println((map.horn() + "  " + map.title()).strip());
        out.println("  cup             pad     inside  found   left    (m: of its model, not read on this horn)");
        for (CupLine cup : map.cups()) {
            out.printf(
                    "  %-15s %-7s %-7s %-7s %-7s%n",
                    cup.title(), size(cup.pad()), size(cup.inside()), size(cup.found()), size(cup.left()));
            cup.remarks().forEach(remark -> out.println("      " + remark));
        }
    }

    private static String size(CupLine.@Nullable Size size) {
        return size == null ? "" : size.mm() + (size.own() ? "" : " m");
    }
}
