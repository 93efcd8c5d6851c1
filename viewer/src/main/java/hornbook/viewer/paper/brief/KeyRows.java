package hornbook.viewer.paper.brief;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Cup;
import hornbook.catalogue.entry.KeyMap;
import hornbook.indexer.brief.BriefAnswer;
import hornbook.viewer.paper.Grid;
import hornbook.viewer.paper.Headline;
import hornbook.viewer.paper.Item;
import hornbook.viewer.paper.Item.Mark;
import hornbook.viewer.paper.Piece;
import hornbook.viewer.paper.Prose;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Pads and key heights by cup, and where there is room what each key turns on and its spring. */
final class KeyRows {
    private static final List<Double> SHARES = List.of(0.19, 0.11, 0.12, 0.35, 0.23);

    private final Catalogue catalogue;
    private final BriefDetail detail;

    KeyRows(Catalogue catalogue, BriefDetail detail) {
        this.catalogue = catalogue;
        this.detail = detail;
    }

    List<Piece> of(BriefAnswer brief) {
        if (detail.keyByKey() && !brief.map().isEmpty()) {
            return table(brief);
        }
        List<Piece> pieces = new ArrayList<>();
        list(pieces, "Usual pads, mm", brief.pads());
        list(pieces, "Usual key heights, mm", brief.keyHeights());
        return pieces;
    }

    private void list(List<Piece> pieces, String title, Map<String, Double> byCup) {
        if (!byCup.isEmpty()) {
            pieces.add(new Headline(title, detail.points() + 2));
            String all = byCup.entrySet().stream()
                    .map(cup -> cup(cup.getKey()) + " " + number(cup.getValue()))
                    .collect(Collectors.joining("; "));
            pieces.add(Item.of(new Prose().plain(all), Mark.NONE, detail.points()));
        }
    }

    private List<Piece> table(BriefAnswer brief) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Headline("Key by key, mm: measure before you order", detail.points() + 2));
        pieces.add(row(List.of("key", "pad", "height", "turns on, out at", "spring"), true));
        Set<String> shown = new LinkedHashSet<>();
        for (KeyMap key : brief.map()) {
            String cup = Objects.requireNonNullElse(key.cup(), "");
            shown.add(cup);
            pieces.add(row(
                    List.of(
                            key.key(),
                            number(brief.pads().get(cup)),
                            number(brief.keyHeights().get(cup)),
                            turning(key),
                            spring(key)),
                    false));
        }
        Stream.concat(brief.pads().keySet().stream(), brief.keyHeights().keySet().stream())
                .distinct()
                .filter(cup -> !shown.contains(cup))
                .forEach(cup -> pieces.add(row(
                        List.of(
                                cup(cup),
                                number(brief.pads().get(cup)),
                                number(brief.keyHeights().get(cup)),
                                "",
                                ""),
                        false)));
        return pieces;
    }

    private Grid row(List<String> cells, boolean head) {
        double points = detail.points() - 0.5;
        return head ? Grid.head(cells, SHARES, points) : Grid.row(cells, SHARES, points);
    }

    private static String turning(KeyMap key) {
        return Stream.of(key.turnsOn(), sizes(key.diameter(), key.length()), key.thread(), key.drawsOut())
                .filter(Objects::nonNull)
                .filter(word -> !word.isBlank())
                .collect(Collectors.joining(" "));
    }

    private static String spring(KeyMap key) {
        return Stream.of(key.spring(), sizes(key.springSize(), key.springLength()))
                .filter(Objects::nonNull)
                .filter(word -> !word.isBlank())
                .collect(Collectors.joining(" "));
    }

    private static String sizes(@Nullable Double one, @Nullable Double other) {
        return Stream.of(one, other)
                .filter(Objects::nonNull)
                .map(KeyRows::number)
                .collect(Collectors.joining("×"));
    }

    private String cup(String id) {
        return catalogue
                .entry(id)
                .filter(Cup.class::isInstance)
                .map(cup -> cup.title())
                .orElse(id.replaceFirst("^cup-", ""));
    }

    private static String number(@Nullable Double size) {
        return size == null ? "" : String.format(Locale.ROOT, "%.3f", size).replaceFirst("\\.?0+$", "");
    }
}
