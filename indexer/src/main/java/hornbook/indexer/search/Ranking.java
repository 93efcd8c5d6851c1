package hornbook.indexer.search;

import hornbook.indexer.index.Row;
import hornbook.indexer.index.Terms;
import hornbook.indexer.index.View;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
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

    /** More of one make is a list of its own. */
    private static final int HORNS = 12;

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
        List<Found> found = found(top(query(), Math.max(CANDIDATES, question.limit())));
        hornsNamed(found);
        found.sort(Found::order);
        new Beside(view, question).widen(found);
        wordsThemselves(found);
        List<Found> order = new Order(plan).of(found);
        return shown(order.subList(0, Math.min(question.limit(), order.size())));
    }

    private List<Found> found(ScoreDoc[] top) {
        Arrays.sort(top, (one, other) -> Integer.compare(one.doc, other.doc));
        List<Row> rows = view.rows(Arrays.stream(top).mapToInt(one -> one.doc).toArray());
        List<Found> found = new ArrayList<>();
        for (int i = 0; i < top.length; i++) {
            found.add(new Found(top[i].doc, rows.get(i), top[i].score));
        }
        return found;
    }

    /** Horns that meet every word: among many lots of the make they would not be seen. */
    private void hornsNamed(List<Found> found) {
        List<Unit> telling = plan.telling();
        if (telling.isEmpty() || !question.kinds().isEmpty() || found.size() < CANDIDATES) {
            return;
        }
        BooleanQuery.Builder all = new BooleanQuery.Builder();
        telling.forEach(unit -> all.add(query(unit), BooleanClause.Occur.MUST));
        all.add(kinds(Aim.HORNS), BooleanClause.Occur.FILTER);
        for (Found horn : found(top(all.build(), HORNS))) {
            if (found.stream().noneMatch(known -> known.document() == horn.document())) {
                found.add(horn);
            }
        }
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

    private ScoreDoc[] top(Query query, int most) {
        try {
            return view.searcher().search(query, new TopScoreDocCollectorManager(most, most)).scoreDocs;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Query query() {
        BooleanQuery.Builder all = new BooleanQuery.Builder();
        plan.units().stream()
                .filter(unit -> !unit.ways().isEmpty())
                .forEach(unit -> all.add(query(unit), BooleanClause.Occur.SHOULD));
        all.setMinimumNumberShouldMatch(1);
        if (!question.kinds().isEmpty()) {
            all.add(kinds(question.kinds()), BooleanClause.Occur.FILTER);
        }
        return all.build();
    }

    private Query query(Unit unit) {
        return new DisjunctionMaxQuery(
                unit.ways().stream()
                        .map(way -> way.query(unit.weight(), vocabulary))
                        .toList(),
                0);
    }

    private static Query kinds(Set<String> kinds) {
        BooleanQuery.Builder any = new BooleanQuery.Builder();
        kinds.forEach(
                kind -> any.add(new TermQuery(new Term(Terms.TERM, Terms.kind(kind))), BooleanClause.Occur.SHOULD));
        return any.build();
    }
}
