package hornbook.catalogue.diagnose;

import hornbook.catalogue.diagnose.DiagnoseAnswer.CautionLine;
import hornbook.catalogue.diagnose.DiagnoseAnswer.Cure;
import hornbook.catalogue.diagnose.DiagnoseAnswer.QuirkLine;
import hornbook.catalogue.diagnose.DiagnoseAnswer.TaskLine;
import hornbook.catalogue.diagnose.Suspects.Suspect;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Caution;
import hornbook.catalogue.entry.Fault;
import hornbook.catalogue.entry.Quirk;
import java.util.List;
import java.util.Map;

/** How causes are cured, and how what the cure uses can hurt. */
record Cures(Catalogue catalogue) {
    /** What a word in a remedy brings to the bench (common practice). */
    private static final Map<String, List<String>> BRINGS = Map.of(
            "solder",
                    List.of(
                            "caution-lead-metal",
                            "caution-zinc-chloride-flux",
                            "caution-burnt-glue-comma-epoxy-or-lacquer-fume"),
            "solvent", List.of("caution-propan-2-ol"),
            "locker", List.of("caution-anaerobic-thread-locker"),
            "repad", List.of("caution-mould-and-old-case-dust"));

    Cure of(Suspect suspect) {
        Fault fault = suspect.cured(catalogue);
        return new Cure(
                suspect.cause().id(),
                fault.id(),
                fault.remedy(),
                fault.minutes().low(),
                fault.minutes().high(),
                fault.per(),
                tasks(fault),
                fault.quirks().stream()
                        .map(id -> catalogue.quirks().get(id))
                        .filter(Quirk.class::isInstance)
                        .map(q -> new QuirkLine(q.id(), q.title(), q.caution(), q.whatToDo()))
                        .toList(),
                cautions(fault.remedy()));
    }

    /** Usual minutes: low and high are about the tenth and the ninetieth in a hundred, log-normal (trade figures). */
    double minutes(Suspect suspect) {
        Fault fault = suspect.cured(catalogue);
        return Math.sqrt(fault.minutes().low() * fault.minutes().high());
    }

    private List<TaskLine> tasks(Fault fault) {
        return catalogue.tasks().values().stream()
                .filter(task -> task.faults().contains(fault.id()))
                .map(task -> new TaskLine(task.id(), task.title()))
                .toList();
    }

    private List<CautionLine> cautions(String remedy) {
        return BRINGS.entrySet().stream()
                .filter(brings -> remedy.contains(brings.getKey()))
                .flatMap(brings -> brings.getValue().stream())
                .map(id -> catalogue.entry(id).orElse(null))
                .filter(Caution.class::isInstance)
                .map(Caution.class::cast)
                .map(c -> new CautionLine(c.id(), c.title(), c.text()))
                .toList();
    }
}
