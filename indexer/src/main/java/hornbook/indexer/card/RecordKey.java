package hornbook.indexer.card;

/** Names a record of which a card is made. */
public record RecordKey(Source kind, String id) {

    /** Where the record is kept. A shop's tool is found under the entry of its kind. */
    public enum Source {
        ENTRY,
        CABINET,
        DRAWER,
        PLACE,
        LOT,
        HORN,
        JOB,
        SUPPLIER
    }
}
