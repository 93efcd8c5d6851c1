package hornbook.indexer.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.PrefixQuery;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;

/** Lucene as it comes: standard analyzer, BM25, any of the words, the last as a prefix; rows from stored fields. */
final class PlainLucene implements Peer {
    private static final String BODY = "body";

    private final StandardAnalyzer analyzer = new StandardAnalyzer();
    private final Directory directory;
    private final DirectoryReader reader;
    private final IndexSearcher searcher;

    PlainLucene(Path folder) throws IOException {
        directory = FSDirectory.open(folder);
        reader = DirectoryReader.open(directory);
        searcher = new IndexSearcher(reader);
    }

    /** Writes the index: as many records a second as it can. */
    static void build(Path folder, Texts texts) throws IOException {
        try (Directory directory = FSDirectory.open(folder);
                IndexWriter writer = new IndexWriter(
                        directory, new IndexWriterConfig(new StandardAnalyzer()).setRAMBufferSizeMB(12))) {
            texts.each(one -> add(writer, one));
            writer.commit();
        }
    }

    private static void add(IndexWriter writer, Texts.One one) {
        try {
            writer.addDocument(document(one));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Document document(Texts.One one) {
        Document document = new Document();
        document.add(new StringField("id", one.id(), Field.Store.YES));
        document.add(new StoredField("title", one.title()));
        document.add(new TextField(BODY, one.body(), Field.Store.NO));
        return document;
    }

    @Override
    public String name() {
        return "plain Lucene";
    }

    @Override
    public int ask(String typed) throws IOException {
        BooleanQuery.Builder all = new BooleanQuery.Builder();
        List<String> words = words(typed);
        for (int i = 0; i < words.size(); i++) {
            Term term = new Term(BODY, words.get(i));
            boolean last = i == words.size() - 1 && !typed.endsWith(" ");
            all.add(last ? new PrefixQuery(term) : new TermQuery(term), BooleanClause.Occur.SHOULD);
        }
        int read = 0;
        for (ScoreDoc hit : searcher.search(all.build(), ROWS).scoreDocs) {
            Document row = searcher.storedFields().document(hit.doc);
            read += row.get("id").isEmpty() || row.get("title") == null ? 0 : 1;
        }
        return read;
    }

    private List<String> words(String typed) throws IOException {
        List<String> words = new ArrayList<>();
        try (TokenStream stream = analyzer.tokenStream(BODY, typed)) {
            CharTermAttribute term = stream.addAttribute(CharTermAttribute.class);
            stream.reset();
            while (stream.incrementToken()) {
                words.add(term.toString());
            }
            stream.end();
        }
        return words;
    }

    @Override
    public void close() throws IOException {
        reader.close();
        directory.close();
    }
}
