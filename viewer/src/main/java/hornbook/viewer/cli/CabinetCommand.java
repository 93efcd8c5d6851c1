package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Counted;
import hornbook.shared.shop.LabelState;
import hornbook.shared.stock.CabinetPlan;
import hornbook.shared.stock.DrawerFront;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Cabinets: listed, drawn, set up. */
@Command(
        name = "cabinet",
        header = "Lists the cabinets, shows one with its drawers, or sets up a new one.",
        footer = "hornbook cabinet \"Oak chest\" --rows 3 --columns 4 --where \"by the door\"")
final class CabinetCommand implements Callable<Integer> {
    @Parameters(paramLabel = "NAME", arity = "0..1", description = "Its name or number; if left out, all are listed.")
    String name = "";

    @Option(names = "--rows", paramLabel = "N", description = "Set it up: rows of drawers.")
    @Nullable
    Integer rows;

    @Option(names = "--columns", paramLabel = "N", description = "Set it up: drawers in a row.")
    @Nullable
    Integer columns;

    @Option(names = "--where", paramLabel = "WORDS", description = "Where it stands.")
    String where = "";

    private final Frame frame;

    CabinetCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        if (rows != null && columns != null) {
            return frame.writing(this::setUp);
        }
        if (rows != null || columns != null) {
            throw new BadInput("a cabinet needs both: --rows N and --columns N");
        }
        return name.isEmpty()
                ? frame.reading(this::all)
                : frame.showing("cabinet", name, shop -> find(shop, name), CabinetCommand::front);
    }

    private int setUp(Workshop workshop) {
        workshop.cabinetBook().add(name, rows == null ? 0 : rows, columns == null ? 0 : columns, where);
        CabinetPlan made = workshop.furniture().plans().getLast();
        return frame.answer(made, out -> {
            line(out, made);
            out.println("“hornbook look-through " + made.drawers().getFirst().id()
                    + " --label WORDS --contents WORDS” says what is in the first; “hornbook undo” takes it all back");
        });
    }

    private static Optional<CabinetPlan> find(Workshop workshop, String called) {
        return workshop.furniture().plans().stream()
                .filter(plan -> plan.name().equalsIgnoreCase(called)
                        || plan.id().equals(called)
                        || plan.id().equals("c-" + called))
                .findFirst();
    }

    /** The cabinets as they stand in the shop. */
    record Cabinets(List<CabinetPlan> cabinets) {}

    private int all(Workshop workshop) {
        Cabinets all = new Cabinets(workshop.furniture().plans());
        return all.cabinets().isEmpty()
                ? frame.nothing(
                        all, out -> out.println("there is no cabinet yet: set one up with --rows and --columns"))
                : frame.answer(all, out -> all.cabinets().forEach(plan -> line(out, plan)));
    }

    private static void line(PrintWriter out, CabinetPlan plan) {
        long drifted = plan.drawers().stream()
                .filter(front -> front.labelState() == LabelState.DRIFTED)
                .count();
        long empty = plan.drawers().stream().filter(DrawerFront::empty).count();
        out.printf(
                "%-10s %s  %d by %d%s  %s, %s wrong, %d empty%n",
                plan.id(),
                plan.name(),
                plan.rows(),
                plan.columns(),
                plan.where().isBlank() ? "" : "  " + plan.where() + ";",
                Counted.of(plan.drawers().size(), "drawer"),
                Counted.of(drifted, "label"),
                empty);
    }

    private static void front(PrintWriter out, CabinetPlan plan) {
        line(out, plan);
        plan.drawers()
                .forEach(front -> out.printf(
                        "  r%dc%-3d %-14s %s%s%n",
                        front.row(),
                        front.column(),
                        front.id(),
                        front.label().isBlank() ? "(no label)" : front.label(),
                        front.empty() ? "  (empty)" : front.heed() == null ? "" : "  ! " + front.heed()));
    }
}
