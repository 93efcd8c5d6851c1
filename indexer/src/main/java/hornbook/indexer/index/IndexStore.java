package hornbook.indexer.index;

import hornbook.indexer.card.Card;
import hornbook.indexer.card.RecordKey;
import hornbook.indexer.card.ShopCards;
import hornbook.indexer.words.Lexicon;
import hornbook.indexer.words.TextReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.Optional;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Sort;
import org.apache.lucene.search.SortField;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.search.TopDocs;
import org.apache.lucene.store.Directory;

/** Writes cards into a Lucene directory. Nothing is on the disk before {@link #commit}. Not for several threads. */
final class IndexStore implements AutoCloseable {
    private static final String LEXICON = "lexicon";
    private static final double BUFFER_MB = 12;

    private final Directory directory;
    private final IndexWriter writer;
    private final TextReader reader;

    IndexStore(Directory directory, TextReader reader) {
        this.directory = directory;
        this.reader = reader;
        IndexWriterConfig config = new IndexWriterConfig()
                .setSimilarity(new ImpactSimilarity())
                .setIndexSort(new Sort(new SortField(Terms.RANK, SortField.Type.LONG, true)))
                .setRAMBufferSizeMB(BUFFER_MB)
                .setCommitOnClose(false);
        try {
            writer = new IndexWriter(directory, config);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    IndexWriter writer() {
        return writer;
    }

    /** Everything anew; what was there stays readable until the next commit. */
    int build(ShopCards cards, Lexicon lexicon) {
        try {
            writer.deleteAll();
            Documents documents = new Documents(lexicon, reader);
            int[] count = new int[1];
            cards.each(card -> {
                add(documents.of(card));
                count[0]++;
            });
            add(lexiconDocument(lexicon));
            return count[0];
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The cards of knowledge anew, in the place of those there. */
    void knowledge(ShopCards cards, Lexicon lexicon) {
        Documents documents = new Documents(lexicon, reader);
        cards.knowledge(card -> replace(card, documents));
    }

    /** Some cards anew, as the records stand now; what is gone goes. */
    void update(ShopCards cards, Lexicon lexicon, Collection<RecordKey> keys) {
        Documents documents = new Documents(lexicon, reader);
        for (RecordKey key : keys) {
            Optional<Card> card = cards.one(key);
            card.ifPresentOrElse(now -> replace(now, documents), () -> delete(key.id()));
        }
    }

    private void add(Document document) {
        try {
            writer.addDocument(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void replace(Card card, Documents documents) {
        try {
            writer.updateDocument(new Term(Terms.ID, card.id()), documents.of(card));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void delete(String id) {
        try {
            writer.deleteDocuments(new Term(Terms.ID, id));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Document lexiconDocument(Lexicon lexicon) {
        Document document = new Document();
        document.add(new StringField(Terms.ID, LEXICON, Field.Store.NO));
        document.add(new StoredField(LEXICON, lexicon.text()));
        return document;
    }

    /** The lexicon that an index was made with. */
    static Lexicon lexicon(DirectoryReader index) throws IOException {
        TopDocs found = new IndexSearcher(index).search(new TermQuery(new Term(Terms.ID, LEXICON)), 1);
        if (found.scoreDocs.length == 0) {
            throw new IOException("the index holds no lexicon");
        }
        String text = index.storedFields().document(found.scoreDocs[0].doc).get(LEXICON);
        return Lexicon.read(text == null ? "" : text);
    }

    void commit(Stamp stamp) {
        try {
            writer.setLiveCommitData(stamp.written().entrySet());
            writer.commit();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        try (directory) {
            writer.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
