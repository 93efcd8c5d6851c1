package hornbook.viewer.cli;

import hornbook.catalogue.called.Called;
import hornbook.shared.shop.Counted;
import hornbook.shared.stock.PlaceFront;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Places that are no drawer: listed, set up. */
@Command(
        name = "place",
        header = "Lists hooks, shelves, tubes and parts horns, or sets up a new one.",
        footer = "hornbook place \"hook 7\" --kind hook --where \"over the bench\"")
final class PlaceCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "NAME",
            arity = "0..1",
            description = "Of a new one; if left out, all are listed. “hornbook drawer NAME” shows what lies there.")
    String name = "";

    @Option(names = "--kind", paramLabel = "WORDS", description = "What it is: hook, shelf, tube, parts horn.")
    String kind = "";

    @Option(names = "--where", paramLabel = "WORDS", description = "Where it is.")
    String where = "";

    @Option(names = "--model", paramLabel = "MODEL", description = "Which model a parts horn is.")
    @Nullable
    String model;

    @Option(names = "--note", paramLabel = "WORDS", description = "What is to be said of it.")
    String note = "";

    private final Frame frame;

    PlaceCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return name.isEmpty() ? frame.reading(this::all) : frame.writing(this::setUp);
    }

    private int setUp(Workshop workshop) {
        workshop.placeBook()
                .add(
                        name,
                        kind,
                        where,
                        model == null
                                ? null
                                : Called.models(workshop.catalogue())
                                        .find(model)
                                        .id(),
                        note);
        PlaceFront made = workshop.furniture().places().getLast();
        return frame.answer(made, out -> line(out, made));
    }

    /** Every place that is no drawer. */
    record AllPlaces(List<PlaceFront> places) {}

    private int all(Workshop workshop) {
        AllPlaces all = new AllPlaces(workshop.furniture().places());
        return all.places().isEmpty()
                ? frame.nothing(all, out -> out.println("there is no such place yet: set one up with --kind"))
                : frame.answer(all, out -> all.places().forEach(place -> line(out, place)));
    }

    private static void line(PrintWriter out, PlaceFront place) {
        out.printf(
                "%-18s %s  (%s)%s  %s, %s%n",
                place.id(),
                place.name(),
                place.kind(),
                place.where().isBlank() ? "" : "  " + place.where() + ";",
                Counted.of(place.lots(), "lot"),
                Counted.of(place.tools(), "tool"));
    }
}
