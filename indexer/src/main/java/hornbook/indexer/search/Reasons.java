package hornbook.indexer.search;

import hornbook.indexer.index.Row;
import hornbook.indexer.index.View;
import hornbook.indexer.words.Cutter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.Scorer;
import org.jspecify.annotations.Nullable;

/** Says in words why a hit is there: which pieces of the query it meets, and how each was read. */
final class Reasons {
    private final View view;
    private final Vocabulary vocabulary;
    private final Plan plan;
    /** The same way is met by many hits; what it means is looked up once. */
    private final Map<Way, String> readings = new IdentityHashMap<>();

    Reasons(View view, Vocabulary vocabulary, Plan plan) {
        this.view = view;
        this.vocabulary = vocabulary;
        this.plan = plan;
    }

    /**
     * Why each of some hits is there.
     *
     * @param documents of the hits, in rising order
     * @return for each the ways it was met, one a unit
     */
    List<List<Met>> of(int[] documents) {
        List<List<Met>> met = new ArrayList<>();
        for (int i = 0; i < documents.length; i++) {
            met.add(new ArrayList<>());
        }
        try {
            for (Unit unit : plan.units()) {
                for (Way way : unit.ways()) {
                    mark(unit, way, documents, met);
                }
            }
            return met;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A unit that a record meets, and how. */
    record Met(Unit unit, Way way) {}

    private void mark(Unit unit, Way way, int[] documents, List<List<Met>> met) throws IOException {
        int at = 0;
        for (LeafReaderContext leaf : view.searcher().getIndexReader().leaves()) {
            int end = leaf.docBase + leaf.reader().maxDoc();
            DocIdSetIterator there = null;
            boolean asked = false;
            for (; at < documents.length && documents[at] < end; at++) {
                if (isMet(met.get(at), unit)) {
                    continue;
                }
                there = asked ? there : standing(way, leaf);
                asked = true;
                if (there != null && stands(there, documents[at] - leaf.docBase)) {
                    met.get(at).add(new Met(unit, way));
                }
            }
        }
    }

    /** The records of one part of the index that meet the way; null if none. */
    private @Nullable DocIdSetIterator standing(Way way, LeafReaderContext leaf) throws IOException {
        if (way.by() instanceof Way.By.OfTerm(String term)) {
            return vocabulary.postings(term, leaf);
        }
        Query query = view.searcher().rewrite(way.query(1, vocabulary));
        Scorer scorer = view.searcher()
                .createWeight(query, ScoreMode.COMPLETE_NO_SCORES, 1)
                .scorer(leaf);
        return scorer == null ? null : scorer.iterator();
    }

    private static boolean stands(DocIdSetIterator there, int document) throws IOException {
        int now = there.docID();
        return now == document || (now < document && there.advance(document) == document);
    }

    /** Of several ways for one unit the first said is the plainest. */
    private static boolean isMet(List<Met> met, Unit unit) {
        return !met.isEmpty() && met.getLast().unit() == unit;
    }

    /** One line for people. */
    String why(Row row, List<Met> met) {
        Set<String> said = new LinkedHashSet<>();
        Set<String> name = new LinkedHashSet<>();
        Set<String> text = new LinkedHashSet<>();
        String title = " " + Cutter.joined(row.title()) + " ";
        for (Met one : met) {
            Unit unit = one.unit();
            if (unit.sort() == Unit.Sort.PAIR) {
                continue;
            }
            String reading = readings.computeIfAbsent(one.way(), Way::reading);
            if (!reading.isEmpty()) {
                said.add("“" + unit.said() + "” " + reading);
            } else if (unit.sort() == Unit.Sort.SIZE || one.way().by() instanceof Way.By.OfSize) {
                said.add("size " + unit.said());
            } else {
                (title.contains(" " + unit.said()) ? name : text).add(unit.said());
            }
        }
        List<String> reasons = new ArrayList<>();
        if (!name.isEmpty()) {
            reasons.add("named " + String.join(", ", name));
        }
        if (!text.isEmpty()) {
            reasons.add("speaks of " + String.join(", ", text));
        }
        reasons.addAll(said);
        shop(row, reasons);
        return String.join("; ", reasons);
    }

    private static void shop(Row row, List<String> reasons) {
        var shown = row.shown();
        switch (shown.heed()) {
            case KEEPSAKE -> reasons.add("a keepsake: measure it, never use it");
            case RESERVE -> reasons.add("a reserve: only on asking");
            case NONE -> reasons.add("none left");
            case MISLABELLED -> {}
            case OPEN -> {
                if (shown.onHand() != null) {
                    reasons.add("on hand");
                }
            }
        }
        if (shown.remark() != null) {
            reasons.add(shown.remark());
        }
    }
}
