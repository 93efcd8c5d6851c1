package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.TakingDown;
import hornbook.shared.exchange.CsvFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/** takedown.csv: the order in which models were taken down, with how and why. */
final class TakedownFile {
    static final String NAME = "takedown.csv";
    private static final List<String> COLUMNS = List.of("model", "step", "piece", "how", "reason", "job");

    void read(Path file, Intake intake) {
        Models<TakingDown> models = new Models<>(intake);
        new Table(file, COLUMNS).read(intake, cells -> models.add(cells.text("model"), step(cells)));
        models.finish(NAME, (model, steps) -> model.with(model.map(), steps));
    }

    void write(Catalogue catalogue, Sorted sorted, Path file) throws IOException {
        var models = sorted.own(catalogue, catalogue.models().values(), NAME);
        CsvFile.write(
                file,
                COLUMNS,
                models.flatMap(m -> m.takingDown().stream().map(step -> row(m.id(), step)))
                        .toList());
    }

    private static TakingDown step(Cells cells) {
        int step = cells.whole("step");
        if (step < 1) {
            throw new BadCell("step", "steps count from 1");
        }
        return new TakingDown(
                step, cells.text("piece"), cells.text("how"), cells.optional("reason"), cells.optional("job"));
    }

    private static List<String> row(String model, TakingDown step) {
        return List.of(
                model,
                Integer.toString(step.step()),
                step.piece(),
                step.how(),
                Objects.toString(step.reason(), ""),
                Objects.toString(step.job(), ""));
    }
}
