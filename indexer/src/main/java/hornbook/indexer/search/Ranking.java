package hornbook.indexer.search;

import hornbook.indexer.index.Row;
import hornbook.indexer.index.Terms;
import hornbook.indexer.index.View;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.DisjunctionMaxQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.search.TopScoreDocCollectorManager;

/** Ranks what the index holds by a plan. */
final class Ranking {
    /** As many are looked at again before the first are shown. */
    private static final int CANDIDATES = 60;

    private static final double WORD = 0.99;

    private final View view;
    private final Vocabulary vocabulary;
    private final Plan plan;
    private final Question question;

    Ranking(View view, Vocabulary vocabulary, Plan plan, Question question) {
        this.view = view;
        this.vocabulary = vocabulary;
        this.plan = plan;
        this.question = question;
    }

    List<Hit> hits() {
        List<Found> found = new ArrayList<>();
        for (ScoreDoc top : top(Math.max(CANDIDATES, question.limit()))) {
            found.add(new Found(top.doc, view.row(top.doc), top.score));
        }
        found.sort(Found::order);
        new Beside(view, question).widen(found);
        wordsThemselves(found);
        List<Found> order = new Order(plan).of(found);
        return shown(order.subList(0, Math.min(question.limit(), order.size())));
    }

    /** The entry of a word typed comes last: what it means was found before. */
    private void wordsThemselves(List<Found> found) {
        if (!question.kinds().isEmpty() && !question.kinds().contains("word")) {
            return;
        }
        double last = found.stream().mapToDouble(Found::score).min().orElse(1);
        for (String named : plan.named()) {
            int document = view.document(Terms.TERM, Terms.whole(named));
            if (document >= 0) {
                found.add(new Found(document, view.row(document), last * WORD));
            }
        }
    }

    private List<Hit> shown(List<Found> order) {
        Reasons reasons = new Reasons(view, vocabulary, plan);
        int[] documents = order.stream().mapToInt(Found::document).sorted().toArray();
        List<List<Reasons.Met>> met = reasons.of(documents);
        List<Hit> hits = new ArrayList<>();
        for (Found found : order) {
            int at = Arrays.binarySearch(documents, found.document());
            hits.add(hit(found, reasons.why(found.row(), met.get(at))));
        }
        return hits;
    }

    private static Hit hit(Found found, String why) {
        Row row = found.row();
        var shown = row.shown();
        return new Hit(
                row.kind(),
                row.id(),
                row.title(),
                shown.drawer(),
                shown.label(),
                shown.where(),
                shown.onHand(),
                found.score(),
                why);
    }

    private ScoreDoc[] top(int most) {
        if (plan.units().isEmpty()) {
            return new ScoreDoc[0];
        }
        try {
            return view.searcher().search(query(), new TopScoreDocCollectorManager(most, most)).scoreDocs;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Query query() {
        BooleanQuery.Builder all = new BooleanQuery.Builder();
        for (Unit unit : plan.units()) {
            List<Query> ways = unit.ways().stream()
                    .map(way -> way.query(unit.weight(), vocabulary))
                    .toList();
            if (!ways.isEmpty()) {
                all.add(new DisjunctionMaxQuery(ways, 0), BooleanClause.Occur.SHOULD);
            }
        }
        all.setMinimumNumberShouldMatch(1);
        if (!question.kinds().isEmpty()) {
            BooleanQuery.Builder kinds = new BooleanQuery.Builder();
            question.kinds()
                    .forEach(kind -> kinds.add(
                            new TermQuery(new Term(Terms.TERM, Terms.kind(kind))), BooleanClause.Occur.SHOULD));
            all.add(kinds.build(), BooleanClause.Occur.FILTER);
        }
        return all.build();
    }
}
