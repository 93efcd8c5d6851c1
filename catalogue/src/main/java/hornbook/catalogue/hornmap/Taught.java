package hornbook.catalogue.hornmap;

import hornbook.catalogue.entry.KeyMap;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.TakingDown;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.MapRow;
import hornbook.shared.shop.PadUsed;
import hornbook.shared.shop.TakenDown;
import hornbook.shared.store.Books;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A model with what one job adds to it, and that in words. */
record Taught(String job, Model model, List<String> says) {

    Lesson lesson() {
        return new Lesson(job, model.id(), model.title(), says);
    }

    static Taught of(Books books, Job job, Model model) {
        List<String> says = new ArrayList<>();
        List<KeyMap> keys = keys(books, job, model, says);
        List<TakingDown> order = order(books, job, model, says);
        Map<String, Double> pads = new LinkedHashMap<>(model.padSet());
        books.where(PadUsed.class, "job", job.id())
                .forEach(pad -> add(pads, pad.cup(), pad.sizeMm().doubleValue(), "pad", says));
        Map<String, Double> heights = new LinkedHashMap<>(model.keyHeights());
        books.where(Finding.class, "job", job.id()).stream()
                .filter(f -> f.what().equals(Usuals.HEIGHT) && f.asFoundOrLeft().equals("left"))
                .filter(f -> f.unit().equals("mm") && f.value().matches("\\d+(\\.\\d+)?"))
                .forEach(f -> add(heights, f.where(), Double.parseDouble(f.value()), "opening", says));
        return new Taught(job.id(), model.with(keys, order).with(pads, heights), List.copyOf(says));
    }

    private static void add(Map<String, Double> known, String cup, double mm, String what, List<String> says) {
        if (!cup.isEmpty() && known.putIfAbsent(cup, mm) == null) {
            says.add(what + " of " + cup.replaceFirst("^cup-", "") + ": " + Usuals.plain(mm) + " mm");
        }
    }

    private static List<KeyMap> keys(Books books, Job job, Model model, List<String> says) {
        List<KeyMap> keys = new ArrayList<>(model.map());
        for (MapRow row : books.where(MapRow.class, "job", job.id())) {
            boolean known = keys.stream()
                    .anyMatch(key -> key.key().equals(row.key())
                            || (row.cup() != null && row.cup().equals(key.cup())));
            if (!known) {
                keys.add(key(row));
                says.add("key " + row.key() + ": what it turns on, its spring, its rim as measured");
            }
        }
        return keys;
    }

    private static KeyMap key(MapRow row) {
        return new KeyMap(
                row.key(),
                row.cup(),
                words(row.turnsOn()),
                words(row.rod()),
                number(row.diameterMm()),
                number(row.lengthMm()),
                words(row.thread()),
                words(row.drawsOut()),
                words(row.spring()),
                number(row.springMm()),
                number(row.springLengthMm()),
                number(row.cupInsideMm()),
                number(row.rimInsideMm()),
                number(row.rimOutsideMm()),
                number(row.resonatorMm()),
                "this shop, " + row.job());
    }

    private static @Nullable String words(@Nullable String text) {
        return text == null || text.isBlank() ? null : text;
    }

    private static @Nullable Double number(@Nullable BigDecimal mm) {
        return mm == null ? null : mm.doubleValue();
    }

    /** An order is taught whole or not at all: steps of two jobs do not mix. */
    private static List<TakingDown> order(Books books, Job job, Model model, List<String> says) {
        List<TakenDown> steps = books.where(TakenDown.class, "job", job.id()).stream()
                .sorted(Comparator.comparingInt(TakenDown::step))
                .toList();
        if (steps.isEmpty() || !model.takingDown().isEmpty()) {
            return model.takingDown();
        }
        says.add("the order of taking down, in " + steps.size() + " steps");
        return steps.stream()
                .map(s -> new TakingDown(s.step(), s.piece(), s.how(), words(s.reason()), job.id()))
                .toList();
    }
}
