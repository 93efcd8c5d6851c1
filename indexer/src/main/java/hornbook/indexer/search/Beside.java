package hornbook.indexer.search;

import hornbook.indexer.index.Row;
import hornbook.indexer.index.View;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Lends some of a good hit's score to what stands beside it: a fault's quirks, a quirk's look, tools and parts. */
final class Beside {
    private static final int LENDERS = 4;
    /** Who has less than that of the best score lends nothing. */
    private static final double GOOD = 0.6;

    private static final double LENT = 0.9;
    /** Nobody is lent past the lender. */
    private static final double BELOW = 0.97;

    private final View view;
    private final Question question;

    Beside(View view, Question question) {
        this.view = view;
        this.question = question;
    }

    /** @param found best first; stays so */
    void widen(List<Found> found) {
        if (found.isEmpty()) {
            return;
        }
        double best = found.getFirst().score();
        Map<String, Double> lent = new HashMap<>();
        Map<String, Double> most = new HashMap<>();
        for (Found lender : found.subList(0, Math.min(LENDERS, found.size()))) {
            if (lender.score() >= GOOD * best) {
                lender.row().links().forEach((to, share) -> {
                    lent.merge(to, LENT * share * lender.score(), Double::sum);
                    most.merge(to, BELOW * lender.score(), Math::max);
                });
            }
        }
        for (int i = 0; i < found.size(); i++) {
            Found known = found.get(i);
            Double more = lent.remove(known.row().id());
            if (more != null) {
                double limit = most.getOrDefault(known.row().id(), 0.0);
                found.set(i, known.scoring(Math.max(known.score(), Math.min(limit, known.score() + more))));
            }
        }
        double least = found.size() < question.limit() ? 0 : leastShown(found);
        lent.forEach((id, score) -> {
            if (score > least) {
                add(id, score, found);
            }
        });
        found.sort(Found::order);
    }

    /** What has less is not shown whatever it is: it need not be looked up. */
    private double leastShown(List<Found> found) {
        double[] scores = found.stream().mapToDouble(Found::score).sorted().toArray();
        return scores[scores.length - question.limit()];
    }

    private void add(String id, double score, List<Found> found) {
        int document = view.document(id);
        if (document >= 0) {
            Row row = view.row(document);
            if (question.kinds().isEmpty() || question.kinds().contains(row.kind())) {
                found.add(new Found(document, row, score));
            }
        }
    }
}
