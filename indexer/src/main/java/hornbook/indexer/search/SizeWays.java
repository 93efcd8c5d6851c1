package hornbook.indexer.search;

import hornbook.indexer.index.Terms;
import hornbook.indexer.words.Cutter;
import hornbook.indexer.words.Token;
import hornbook.shared.measure.Length;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.Size;
import hornbook.shared.measure.SizeMention;
import hornbook.shared.measure.Thread;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** In what ways a size, a thread or a bare number can be met. No slip is forgiven in any of them. */
final class SizeWays {
    private static final float IN_RUN = 0.4f;
    private static final float BARE = 0.8f;
    private static final float ENDLESS = 0.7f;
    private static final float FAMILY = 0.7f;
    private static final float RARE = 4;
    private static final int ENDINGS = 48;
    /** A bare whole number may be millimetres up to the largest pad there is. */
    private static final int LARGEST_BARE = 100;

    private static final int SHORTEST_SERIAL = 3;

    private final Vocabulary vocabulary;

    SizeWays(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    Unit unit(SizeMention mention, int at) {
        List<Way> ways = new ArrayList<>();
        int most = 0;
        switch (mention.size()) {
            case Size.Plain(Measured size) -> {
                ways.add(Way.size(size, 1));
                ways.add(Way.of(new Way.By.OfSpan(size), 1, "within its range"));
            }
            case Size.OfThread(var threads) -> {
                for (var thread : threads) {
                    String term = Terms.thread(thread.designation());
                    most = Math.max(most, vocabulary.count(term));
                    ways.add(Way.term(term, 1, "thread " + thread.designation()));
                    family(thread).ifPresent(ways::add);
                }
            }
        }
        float weight = most > 0 ? vocabulary.weight(most) : RARE;
        return new Unit(mention.text(), at, at, ways, weight, Unit.Sort.SIZE);
    }

    /** Who asks for a thread is served by what is known of its family. */
    private Optional<Way> family(Thread thread) {
        String family = switch (thread.system()) {
            case ISO_METRIC -> thread.series().startsWith("withdrawn") ? "old-metric" : "iso-metric";
            case LOEWENHERZ -> "old-metric";
            case UNIFIED -> "unified-number";
            case BA -> "british-association";
            default -> "";
        };
        String concept = Terms.concept("thread-family=" + family);
        return vocabulary.count(concept) > 0
                ? Optional.of(Way.term(concept, FAMILY, "is of the family " + family.replace('-', ' ')))
                : Optional.empty();
    }

    /** The words of a size by name: {@code no 47 drill} asks for number drills. */
    List<Token> words(SizeMention mention) {
        List<Token> words = new ArrayList<>();
        for (Token word : Cutter.cut(mention.text())) {
            boolean numbered = word.text().equals("no");
            if (numbered || (word.letters() && word.text().length() > 2)) {
                words.add(numbered ? new Token("number", word.start(), word.end(), false) : word);
            }
        }
        return words;
    }

    /** A number by itself: as written, the beginning of a longer one, millimetres, or a serial in a maker's run. */
    Unit number(Token token, int at, boolean half) {
        List<Way> ways = new ArrayList<>();
        String written = token.text();
        int most = vocabulary.count(written);
        if (most > 0) {
            ways.add(Way.term(written, 1, ""));
        }
        if (vocabulary.count(Terms.id(written)) > 0) {
            ways.add(Way.term(Terms.id(written), 1, "is its number"));
        }
        if (vocabulary.count(Terms.label(written)) > 0) {
            ways.add(Way.term(Terms.label(written), 0.5f, "on the label"));
        }
        if (half && written.length() >= SHORTEST_SERIAL) {
            for (String longer : vocabulary.beginning(written, ENDINGS)) {
                if (!longer.equals(written)) {
                    ways.add(Way.term(longer, ENDLESS, "begins so"));
                }
            }
        }
        whole(written, ways);
        return new Unit(written, at, at, ways, most > 0 ? vocabulary.weight(most) : RARE, Unit.Sort.NUMBER);
    }

    private static void whole(String written, List<Way> ways) {
        if (written.length() > 9 || !written.chars().allMatch(Character::isDigit)) {
            return;
        }
        int number = Integer.parseInt(written);
        if (number > 0 && number <= LARGEST_BARE) {
            ways.add(Way.size(Measured.single(Length.ofMillimetres(written)), BARE));
        }
        if (written.length() > SHORTEST_SERIAL) {
            ways.add(Way.of(new Way.By.OfRun(number), IN_RUN, "inside its run of numbers"));
        }
    }
}
