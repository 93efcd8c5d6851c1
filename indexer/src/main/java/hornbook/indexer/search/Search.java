package hornbook.indexer.search;

import hornbook.indexer.index.ShopIndex;
import hornbook.indexer.index.View;
import hornbook.shared.shop.BadInput;
import java.util.List;

/** Finds what a repairer types. Total: any text has an answer, be it empty. */
public final class Search {
    private final ShopIndex index;
    private final Remembered remembered = new Remembered();

    public Search(ShopIndex index) {
        this.index = index;
    }

    /**
     * Finds what the text asks for, best first.
     *
     * @throws BadInput where a kind is asked for that there is not
     */
    public Answer find(Question question) {
        long start = System.nanoTime();
        for (String kind : question.kinds()) {
            if (!Question.KINDS.contains(kind)) {
                throw new BadInput("there is no kind “" + kind + "”: name one of " + String.join(" ", Question.KINDS));
            }
        }
        return index.ask(view -> answer(view, question, start));
    }

    private Answer answer(View view, Question question, long start) {
        Vocabulary vocabulary = new Vocabulary(view);
        Plan plan = new QueryReader(view, vocabulary, new Slips(view, remembered.in(view))).read(question.text());
        List<Hit> hits = new Ranking(view, vocabulary, plan, question).hits();
        return new Answer(hits, (System.nanoTime() - start) / 1e6, view.asOf().orElse(null));
    }
}
