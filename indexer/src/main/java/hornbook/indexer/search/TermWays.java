package hornbook.indexer.search;

import hornbook.indexer.index.Terms;
import hornbook.indexer.index.View;
import hornbook.indexer.words.Sense;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** In what ways a term of the trade can be met: by what it means. */
final class TermWays {
    private static final float MEANT = 0.9f;
    /** A foreign word in an English query is more likely the English word. */
    private static final float ANOTHER_LANGUAGE = 0.45f;

    private final View view;
    private final Vocabulary vocabulary;
    private final Set<String> languages;

    /** @param languages of the query */
    TermWays(View view, Vocabulary vocabulary, Set<String> languages) {
        this.view = view;
        this.vocabulary = vocabulary;
        this.languages = languages;
    }

    List<Way> ways(String term) {
        List<Way> ways = new ArrayList<>();
        for (Sense sense : view.lexicon().senses(term)) {
            String concept = Terms.concept(sense.concept());
            if (vocabulary.count(concept) > 0) {
                boolean stray = sense.foreign() && !languages.contains(sense.kind()) && vocabulary.count(term) > 0;
                float share = MEANT * sense.share() * (stray ? ANOTHER_LANGUAGE : 1);
                ways.add(new Way(new Way.By.OfTerm(concept), share, () -> reading(sense)));
            }
        }
        return ways;
    }

    private String reading(Sense sense) {
        String meant = sense.concept();
        int document = view.document(meant.replaceFirst("=.*", ""));
        String title = document < 0 ? meant : view.row(document).title();
        String value = meant.indexOf('=') < 0
                ? ""
                : " " + meant.substring(meant.indexOf('=') + 1).replace('-', ' ');
        return switch (sense.kind()) {
            case Sense.NEARLY -> "nearly means " + meant.replaceFirst("nearly ", "");
            case "name" -> document < 0 ? "" : "is " + title + value;
            case "seller" -> "is a seller's name behind which " + title + " stands";
            case "misspelling", "spelling" -> "read as " + title + value;
            case "synonym", "plural", "abbreviation" -> "means " + title + value;
            default -> "is " + sense.kind() + " for " + title + value;
        };
    }
}
