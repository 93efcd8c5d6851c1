package hornbook.viewer.cli;

import hornbook.catalogue.hornmap.CupLine;
import hornbook.catalogue.hornmap.HornMap;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** The horn cup by cup. */
@Command(
        name = "map",
        header = "Shows a horn cup by cup: pads, insides, openings, what its keys turn on.",
        footer = "hornbook horn map h-197")
final class HornMapCommand implements Callable<Integer> {
    @Parameters(paramLabel = "HORN", description = "Its number.")
    String id = "";

    private final Frame frame;

    HornMapCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.showing("horn", id, shop -> shop.hornMaps().horn(id), HornMapCommand::print);
    }

    private static void print(PrintWriter out, HornMap map) {
        out.println(map.horn() + "  " + map.title());
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
