package hornbook.indexer.brief;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.CautionLevel;
import hornbook.catalogue.entry.Quirk;
import hornbook.catalogue.entry.Stage;
import hornbook.catalogue.identify.QuirkChance;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Chooses the quirks worth saying and puts them in order. */
final class QuirkLines {
    private static final double SURE = 0.90;

    private final Catalogue catalogue;
    private final Map<String, String> met;

    /** @param met by quirk, the job on which it was met on this horn */
    QuirkLines(Catalogue catalogue, Map<String, String> met) {
        this.catalogue = catalogue;
        this.met = met;
    }

    List<QuirkLine> of(List<QuirkChance> chances) {
        Comparator<QuirkLine> stopsFirst = Comparator.comparing(q -> q.caution() != CautionLevel.STOP);
        return chances.stream()
                .flatMap(c -> line(c).stream())
                .filter(q -> q.relevance() >= from(q.caution()))
                .sorted(stopsFirst
                        .thenComparing(q -> q.caution() == CautionLevel.STOP ? -q.relevance() : 0)
                        .thenComparing(this::order)
                        .thenComparing(q -> -stake(q.caution()) * q.relevance())
                        .thenComparing(QuirkLine::id))
                .toList();
    }

    private Optional<QuirkLine> line(QuirkChance chance) {
        Quirk quirk = catalogue.quirks().get(chance.quirk());
        return quirk == null ? Optional.empty() : Optional.of(line(quirk, chance));
    }

    private QuirkLine line(Quirk quirk, QuirkChance chance) {
        String job = met.get(quirk.id());
        double relevance = job != null ? 1 : chance.probability();
        return new QuirkLine(
                quirk.id(),
                quirk.title(),
                relevance,
                relevance < SURE,
                quirk.stage(),
                quirk.caution(),
                quirk.bites(),
                quirk.whatToDo(),
                quirk.confirm(),
                relevance < SURE ? chance.settledBy().stream().findFirst().orElse(null) : null,
                quirk.remindedAt(),
                job);
    }

    private int order(QuirkLine quirk) {
        Stage stage = catalogue.stages().get(quirk.stage());
        return stage == null ? Integer.MAX_VALUE : stage.order();
    }

    private static double from(CautionLevel caution) {
        return switch (caution) {
            case STOP -> 0.10;
            case CARE -> 0.30;
            case NOTE -> 0.50;
        };
    }

    private static double stake(CautionLevel caution) {
        return switch (caution) {
            case STOP -> 1;
            case CARE -> 0.5;
            case NOTE -> 0.2;
        };
    }
}
