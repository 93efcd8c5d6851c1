package hornbook.indexer.search;

import hornbook.indexer.index.Row;

/** A record that meets some of a query. */
record Found(int document, Row row, double score) {
    /** Best first. Not by way of Comparator's own, whose classes are spun anew at each start. */
    static int order(Found one, Found other) {
        return Double.compare(other.score, one.score);
    }

    Found scoring(double other) {
        return new Found(document, row, other);
    }
}
