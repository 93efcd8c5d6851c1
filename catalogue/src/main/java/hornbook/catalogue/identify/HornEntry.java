package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Make;
import hornbook.catalogue.entry.Normal;
import hornbook.catalogue.entry.Years;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.MapRow;
import hornbook.shared.shop.PadUsed;
import hornbook.shared.shop.TakenDown;
import hornbook.shared.store.Books;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** One horn as a model's entry, prefilled from the books. */
final class HornEntry {
    /** How alike two horns of one model are in a trait, from the demonstration's models; the rest as horns at large. */
    private static final double ALIKE = 0.85;

    private static final double USUAL_SPREAD = 0.25;

    private final JsonMapper json = new JsonMapper();
    private final Catalogue catalogue;
    private final Books books;
    private final Horn horn;
    private final String job;
    private final List<Seen> looks;

    /** @param looks at the horn, those of the books among them */
    HornEntry(Catalogue catalogue, Books books, Horn horn, String job, List<Seen> looks) {
        this.catalogue = catalogue;
        this.books = books;
        this.horn = horn;
        this.job = job;
        this.looks = looks;
    }

    String json(Make maker, String pattern, @Nullable Years years) {
        String make = maker.id();
        ObjectNode entry = json.createObjectNode();
        entry.put("id", "m-" + slug(make.replaceFirst("^k-", "") + " " + pattern + " " + horn.instrument()));
        entry.put("make", make);
        entry.put("title", maker.title() + " " + pattern + ", " + horn.instrument());
        entry.put("pattern", pattern);
        entry.putArray("instruments").add(horn.instrument());
        years(entry, years == null ? new Years(horn.yearAbout(), horn.yearAbout()) : years);
        traits(entry);
        sizes(entry);
        known(entry);
        keys(entry.putArray("map"));
        order(entry.putArray("taking_down"));
        entry.put("horns_seen", 1);
        entry.put("source", "this shop, " + job);
        entry.put("sureness", "one horn");
        return entry.toString();
    }

    private static void years(ObjectNode entry, Years years) {
        if (years.from() != null || years.to() != null) {
            ObjectNode span = entry.putObject("years");
            Optional.ofNullable(years.from()).ifPresent(from -> span.put("from", from));
            Optional.ofNullable(years.to()).ifPresent(to -> span.put("to", to));
        }
    }

    static String slug(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("(^-|-$)", "");
    }

    private void traits(ObjectNode entry) {
        ObjectNode one = entry.putObject("traits");
        ObjectNode many = entry.putObject("traits_many");
        Map<String, Evidence> evidence = new EvidenceBuilder(catalogue, Experience.NONE).build();
        for (Seen seen : looks) {
            switch (seen) {
                case Seen.OneOf look
                when look.values().size() == 1 && evidence.get(look.trait()) instanceof ChoiceEvidence choice ->
                    shares(one.putObject(look.trait()), choice, look.values().getFirst());
                case Seen.Measured(String trait, double mm, double _) ->
                    one.putObject(trait).put("mean", rounded(mm)).put("sd", spread(trait));
                case Seen.Parts parts -> {
                    ObjectNode there = many.putObject(parts.trait());
                    parts.there().forEach((value, is) -> there.put(value, is ? ALIKE : 1 - ALIKE));
                }
                default -> {}
            }
        }
    }

    private static void shares(ObjectNode into, ChoiceEvidence choice, String seen) {
        double left = 1;
        double[] at = choice.atLarge();
        for (int v = 0; v < at.length; v++) {
            double share = rounded((1 - ALIKE) * at[v]);
            if (!choice.values().get(v).equals(seen) && share > 0) {
                into.put(choice.values().get(v), share);
                left -= share;
            }
        }
        into.put(seen, rounded(left));
    }

    private double spread(String trait) {
        return rounded(catalogue.models().values().stream()
                .flatMap(m -> m.normal(trait).stream())
                .mapToDouble(Normal::sd)
                .average()
                .orElse(USUAL_SPREAD));
    }

    private static double rounded(double value) {
        return Math.round(value * 1000) / 1000.0;
    }

    private List<Finding> findings() {
        return books.where(Finding.class, "horn", horn.id());
    }

    private void sizes(ObjectNode entry) {
        ObjectNode pads = entry.putObject("pad_set");
        for (PadUsed pad : books.where(PadUsed.class, "horn", horn.id())) {
            pads.put(pad.cup(), pad.sizeMm().doubleValue());
        }
        ObjectNode heights = entry.putObject("key_heights");
        for (Finding finding : findings()) {
            if (finding.what().equals("finding-key-height") && finding.unit().equals("mm")) {
                heights.put(finding.where(), new BigDecimal(finding.value()).doubleValue());
            }
        }
    }

    private void known(ObjectNode entry) {
        ArrayNode quirks = entry.putArray("quirks_known");
        findings().stream()
                .map(Finding::what)
                .filter(catalogue.quirks()::containsKey)
                .distinct()
                .forEach(quirks::add);
    }

    private void keys(ArrayNode map) {
        for (MapRow row : books.where(MapRow.class, "horn", horn.id())) {
            new KeyJson(map.addObject()).write(row);
        }
    }

    private void order(ArrayNode steps) {
        books.where(TakenDown.class, "job", job).stream()
                .sorted(Comparator.comparingInt(TakenDown::step))
                .forEach(t -> steps.addObject()
                        .put("step", t.step())
                        .put("piece", t.piece())
                        .put("how", t.how())
                        .put("reason", t.reason())
                        .put("job", job));
    }
}
