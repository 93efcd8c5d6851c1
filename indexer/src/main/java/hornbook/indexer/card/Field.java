package hornbook.indexer.card;

/** Where on a card a text stands: what a word there weighs, and how long such a text usually is. */
public enum Field {
    /** What people call it. */
    TITLE(4.0f, 5, 0.3f),
    /** Other names, makes and models it fits. */
    NAME(3.0f, 6, 0.3f),
    /** What it is about in a sentence: what bites, causes, values, contents. */
    GIST(2.0f, 22, 0.4f),
    /** What else people say for it, all of it one long list. */
    ALIAS(2.0f, 30, 0.1f),
    /** All the rest. */
    TEXT(1.0f, 45, 0.5f),
    /** What is written on the drawer; it may no longer be true. */
    LABEL(1.0f, 3, 0),
    /** Found only by all its words together. */
    WHOLE(1.0f, 2, 0);

    private final float weight;
    private final float usualWords;
    private final float lengthCounts;

    Field(float weight, float usualWords, float lengthCounts) {
        this.weight = weight;
        this.usualWords = usualWords;
        this.lengthCounts = lengthCounts;
    }

    /** What one word weighs in a text of that many words (BM25's length rule, with fixed usual lengths). */
    public float weight(int words) {
        return weight / (1 - lengthCounts + lengthCounts * Math.max(words, usualWords / 3) / usualWords);
    }
}
