package hornbook.indexer.index;

import hornbook.catalogue.entry.SerialRange;
import hornbook.indexer.card.Card;
import hornbook.indexer.words.Lexicon;
import hornbook.indexer.words.TextReader;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.Size;
import org.apache.lucene.document.BinaryDocValuesField;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.FieldType;
import org.apache.lucene.document.LongPoint;
import org.apache.lucene.document.LongRange;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.IndexOptions;

/** Makes the index document of a card. For one thread. */
final class Documents {
    private static final float STANDING_STEPS = 100;
    private static final FieldType TERMS = new FieldType();

    static {
        TERMS.setIndexOptions(IndexOptions.DOCS_AND_FREQS);
        TERMS.setOmitNorms(true);
        TERMS.setTokenized(true);
        TERMS.freeze();
    }

    private final CardTerms terms;

    Documents(Lexicon lexicon, TextReader reader) {
        terms = new CardTerms(lexicon, reader);
    }

    Document of(Card card) {
        CardTerms.Found found = terms.read(card);
        ImpactStream stream = new ImpactStream();
        found.impacts().each(card.standing(), stream::add);
        stream.add(Terms.kind(card.kind()), 1);
        Document document = new Document();
        document.add(new Field(Terms.TERM, stream, TERMS));
        document.add(new StringField(Terms.ID, card.id(), Field.Store.NO));
        document.add(new BinaryDocValuesField(Terms.ROW, Row.write(card)));
        document.add(new NumericDocValuesField(Terms.RANK, Math.round(STANDING_STEPS * card.standing())));
        found.sizes().forEach(size -> size(document, size));
        for (SerialRange run : card.runs()) {
            document.add(new LongRange(Terms.RUN, new long[] {run.from()}, new long[] {run.to()}));
        }
        return document;
    }

    private static void size(Document document, Size size) {
        if (size instanceof Size.Plain(Measured measured)) {
            long low = measured.low().nanometres();
            long high = measured.high().nanometres();
            document.add(
                    low == high
                            ? new LongPoint(Terms.SIZE, low)
                            : new LongRange(Terms.SPAN, new long[] {low}, new long[] {high}));
        }
    }
}
