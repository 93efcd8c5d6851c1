package hornbook.indexer.search;

import hornbook.indexer.index.Row;

/** A record that meets some of a query. */
record Found(int document, Row row, double score) {
    Found scoring(double other) {
        return new Found(document, row, other);
    }
}
