package hornbook.viewer.knowledge;

import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Problem;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the screen shows while one reads.
 *
 * @param counts how many entries of each kind there are
 * @param kind the chosen one; null while the broken files are looked at
 * @param filter words that the listed entries bear
 * @param broken own files that are not used, and why
 * @param open what lies open
 * @param asking set where it is to be said once more whether the open one is to go: what names it, in a sentence
 * @param said what was done, or went wrong, in a sentence
 * @param edit set while an entry is being written
 */
record KnowledgeView(
        Map<Kind, Integer> counts,
        @Nullable Kind kind,
        String filter,
        List<Line> lines,
        List<Problem> broken,
        @Nullable Opened open,
        @Nullable String asking,
        String said,
        @Nullable EditModel edit) {

    static final KnowledgeView START =
            new KnowledgeView(Map.of(), Kind.TRAIT, "", List.of(), List.of(), null, null, "", null);

    KnowledgeView choosing(@Nullable Kind chosen, String words) {
        return new KnowledgeView(counts, chosen, words, lines, broken, open, null, "", null);
    }

    KnowledgeView listing(Map<Kind, Integer> all, List<Line> listed, List<Problem> unused) {
        return new KnowledgeView(all, kind, filter, listed, unused, open, asking, said, edit);
    }

    KnowledgeView opening(@Nullable Opened opened) {
        return new KnowledgeView(counts, kind, filter, lines, broken, opened, null, said, edit);
    }

    KnowledgeView asking(@Nullable String question) {
        return new KnowledgeView(counts, kind, filter, lines, broken, open, question, "", edit);
    }

    KnowledgeView saying(String words) {
        return new KnowledgeView(counts, kind, filter, lines, broken, open, null, words, edit);
    }

    KnowledgeView editing(@Nullable EditModel model) {
        return new KnowledgeView(counts, kind, filter, lines, broken, open, null, "", model);
    }
}
