package hornbook.indexer.brief;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Model;
import hornbook.shared.shop.PadUsed;
import hornbook.shared.store.Books;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the entries say of the horn's body: threads, map, order of taking down, pads, heights. */
final class Body {
    private final Catalogue catalogue;
    private final Likely likely;
    private final WrongScrews wrong;

    Body(Catalogue catalogue, Likely likely, WrongScrews wrong) {
        this.wrong = wrong;
        this.catalogue = catalogue;
        this.likely = likely;
    }

    /** By use, likeliest first; those under one in ten are left out. */
    List<ThreadLine> threads() {
        Map<String, Map<String, Double>> byUse = new LinkedHashMap<>();
        likely.models()
                .forEach((model, p) -> model.threads()
                        .forEach((use, thread) -> byUse.computeIfAbsent(use, _ -> new LinkedHashMap<>())
                                .merge(thread, p, Double::sum)));
        List<ThreadLine> lines = new ArrayList<>();
        byUse.forEach((use, threads) -> {
            double all = threads.values().stream().mapToDouble(p -> p).sum();
            threads.entrySet().stream()
                    .map(t -> new ThreadLine(use, t.getKey(), t.getValue() / all, wrong.into(t.getKey())))
                    .filter(t -> t.probability() >= Likely.COUNTS)
                    .sorted(Comparator.comparingDouble(ThreadLine::probability).reversed())
                    .forEach(lines::add);
        });
        return lines;
    }

    /** The model whose order of taking down serves: the likely one, else another instrument of its pattern. */
    Optional<Model> takenDown() {
        Optional<Model> best = likely.best();
        if (best.isEmpty() || !best.get().takingDown().isEmpty()) {
            return best;
        }
        return catalogue.models().values().stream()
                .filter(m -> !m.takingDown().isEmpty() && PastJobs.samePattern(m, best.get()))
                .findFirst();
    }

    /** Sizes that its entry states, and over them those that went into this very horn. */
    Map<String, Double> pads(Books books, @Nullable String horn) {
        Map<String, Double> pads =
                new LinkedHashMap<>(likely.best().map(Model::padSet).orElse(Map.of()));
        if (horn != null) {
            books.where(PadUsed.class, "horn", horn)
                    .forEach(p -> pads.put(p.cup(), p.sizeMm().doubleValue()));
        }
        return pads;
    }
}
