package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Model;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/** Rows of a file gathered by their model, to be put into it when the file has been read. */
final class Models<T> {
    private final Intake intake;
    private final Map<String, List<T>> rows = new LinkedHashMap<>();

    Models(Intake intake) {
        this.intake = intake;
    }

    void add(String id, T row) {
        if (!(intake.entry(id).orElse(null) instanceof Model)) {
            throw new BadCell("model", "no model has the id " + id + ": add it to models.jsonl first");
        }
        rows.computeIfAbsent(id, _ -> new ArrayList<>()).add(row);
    }

    /** Puts the rows of each model into it. */
    void finish(String file, BiFunction<Model, List<T>, Model> into) {
        rows.forEach((id, theirs) -> {
            if (intake.entry(id).orElse(null) instanceof Model model) {
                intake.replace(into.apply(model, theirs));
                intake.mention(id, file);
            }
        });
    }
}
