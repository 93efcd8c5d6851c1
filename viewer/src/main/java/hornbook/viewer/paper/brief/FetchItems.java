package hornbook.viewer.paper.brief;

import hornbook.indexer.brief.Fetch;
import hornbook.viewer.paper.Headline;
import hornbook.viewer.paper.Item;
import hornbook.viewer.paper.Item.Mark;
import hornbook.viewer.paper.Piece;
import hornbook.viewer.paper.Prose;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** What to fetch as a list to tick off, place by place so that one walks once. What the shop lacks comes last. */
final class FetchItems {
    private static final Pattern NUMBER = Pattern.compile("\\d+");
    private static final String NONE_HERE = "none here: order it, or do without";

    private final BriefDetail detail;

    FetchItems(BriefDetail detail) {
        this.detail = detail;
    }

    List<Piece> of(List<Fetch> all) {
        if (all.isEmpty()) {
            return List.of();
        }
        Map<String, List<Fetch>> places = new TreeMap<>(Comparator.comparing(FetchItems::byNumber));
        List<Fetch> missing = new ArrayList<>();
        for (Fetch fetch : all) {
            String drawer = fetch.drawer();
            (drawer == null ? missing : places.computeIfAbsent(drawer, _ -> new ArrayList<>())).add(fetch);
        }
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Headline("Fetch", detail.points() + 2));
        Map<String, Prose> rows = new LinkedHashMap<>();
        places.forEach((drawer, there) -> add(
                rows.computeIfAbsent(detail.airy() ? drawer : row(drawer), _ -> new Prose()),
                drawer + label(there.getFirst()) + ":",
                there));
        if (!missing.isEmpty()) {
            add(rows.computeIfAbsent("", _ -> new Prose()), "Not in the shop (order, or do without):", missing);
        }
        rows.values().forEach(row -> pieces.add(Item.of(row, Mark.NONE, detail.points())));
        return pieces;
    }

    /** So that drawer 12 comes after drawer 6. */
    private static String byNumber(String drawer) {
        return NUMBER.matcher(drawer)
                .replaceAll(number -> "0".repeat(Math.max(0, 6 - number.group().length())) + number.group());
    }

    /** Drawers in one row of a cabinet share all but their column; all places that are none go together. */
    private static String row(String drawer) {
        return drawer.startsWith("pl-") ? "pl" : drawer.replaceFirst("c?\\d+$", "");
    }

    private static String label(Fetch fetch) {
        return fetch.label() == null || fetch.label().isBlank() ? "" : " “" + fetch.label() + "”";
    }

    private void add(Prose prose, String place, List<Fetch> there) {
        prose.bold(place);
        there.forEach(fetch -> prose.tick().plain(words(fetch)));
    }

    private String words(Fetch fetch) {
        String count = fetch.onHand().equals("0") || fetch.kind().equals("tool") ? "" : " [" + fetch.onHand() + "]";
        return fetch.title() + count + note(fetch);
    }

    private String note(Fetch fetch) {
        String note = fetch.note();
        if (note == null || note.equals(NONE_HERE)) {
            return "";
        }
        if (detail.fetchNotes()) {
            return " (" + note + ")";
        }
        return fetch.substitute() ? " (a substitute: measure)" : "";
    }
}
