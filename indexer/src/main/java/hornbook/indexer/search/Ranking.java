package hornbook.indexer.search;

import hornbook.indexer.index.Row;
import hornbook.indexer.index.Terms;
import hornbook.indexer.index.View;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
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
    private final View view;
    private final Plan plan;
    private final Question question;

    Ranking(View view, Plan plan, Question question) {
        this.view = view;
        this.plan = plan;
        this.question = question;
    }

    List<Hit> hits() {
        List<Hit> hits = new ArrayList<>();
        for (ScoreDoc found : top(question.limit())) {
            hits.add(hit(view.row(found.doc), found.score));
        }
        return hits;
    }

    private static Hit hit(Row row, double score) {
        var shown = row.shown();
        return new Hit(
                row.kind(),
                row.id(),
                row.title(),
                shown.drawer(),
                shown.label(),
                shown.where(),
                shown.onHand(),
                score,
                "");
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
            List<Query> ways =
                    unit.ways().stream().map(way -> way.query(unit.weight())).toList();
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
