package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.TakingDown;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** {@code takedown.csv}: a step of taking a model down a row. */
final class Takedowns {
    static final String FILE = "takedown.csv";
    static final List<String> COLUMNS = List.of("model", "step", "piece", "how", "reason", "job");

    private Takedowns() {}

    static void read(Cells row, Found into) {
        Model model = Models.named(row, into);
        Integer step = row.whole("step");
        if (step == null) {
            throw new BadRow("step", "is empty: number the steps from 1");
        }
        List<TakingDown> steps = new ArrayList<>(model.takingDown());
        steps.add(
                new TakingDown(step, row.text("piece"), row.text("how"), row.optional("reason"), row.optional("job")));
        into.add(Models.with(model, model.map(), steps), FILE);
    }

    static Stream<List<String>> rows(Model model) {
        return model.takingDown().stream()
                .map(step -> List.of(
                        model.id(),
                        Integer.toString(step.step()),
                        step.piece(),
                        step.how(),
                        text(step.reason()),
                        text(step.job())));
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }
}
