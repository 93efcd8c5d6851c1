package hornbook.indexer.bench;

import hornbook.indexer.index.ShopIndex;
import hornbook.indexer.index.Shops;
import hornbook.indexer.search.Question;
import hornbook.indexer.search.Search;
import hornbook.shared.store.Books;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Every keystroke of two hundred queries, twenty rows: find against a floor, plain Lucene and FTS5, in turn:
 * {@code [--records 50000] [--rounds 5] [--queries 200] [--every 1] [--alone] [--slowest]}. Also how large the index is, how
 * fast it is made, and what it takes of the heap.
 */
public final class FindBench {
    private static final long SEED = 20260930;
    /** Time on the processor: all peers answer on the asking thread, and other programs do not count. */
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    private final List<Peer> peers = new ArrayList<>();
    private final Map<String, List<double[]>> times = new LinkedHashMap<>();
    private final Options options;

    private FindBench(Options options) {
        this.options = options;
    }

    public static void main(String[] line) throws Exception {
        new FindBench(Options.of(line)).run();
        System.exit(0);
    }

    private void run() throws Exception {
        Path folder = Files.createTempDirectory("find-bench");
        int records = options.number("records", 50_000);
        try (Books books = LifelikeShop.open(folder.resolve("shop"), records, SEED)) {
            Texts texts = new Texts(books);
            Keystrokes keystrokes = options.text("only", "").isEmpty()
                    ? Keystrokes.of(books, options.number("queries", 200), SEED).every(options.number("every", 1))
                    : new Keystrokes(Collections.nCopies(2_000, options.text("only", "")));
            System.out.printf(
                    "%d records, %d keystrokes%n", records, keystrokes.typed().size());
            try (ShopIndex index = Shops.index(books)) {
                build(folder, texts, index);
                peers.add(0, new Ours(new Search(index)));
                rounds(keystrokes);
                report();
                if (options.has("slowest")) {
                    slowest(keystrokes);
                }
            }
        }
    }

    private void build(Path folder, Texts texts, ShopIndex index) throws Exception {
        long[] bytes = new long[2];
        texts.each(one -> {
            bytes[0] += one.body().length();
            bytes[1]++;
        });
        double ours = seconds(index::rebuild);
        peers.add(Floor.of(texts));
        if (options.has("alone")) {
            return;
        }
        double lucene = seconds(() -> PlainLucene.build(folder.resolve("lucene"), texts));
        System.out.printf(
                Locale.ROOT,
                "text %.1f MB, %d cards; our index %.1f MB (%.2f of the text) in %.1f s; Lucene's %.1f MB in %.1f s;"
                        + " our rate %.2f of Lucene's%n",
                bytes[0] / 1e6,
                bytes[1],
                size(folder.resolve("shop/index")) / 1e6,
                size(folder.resolve("shop/index")) / (double) bytes[0],
                ours,
                size(folder.resolve("lucene")) / 1e6,
                lucene,
                lucene / ours);
        peers.add(new PlainLucene(folder.resolve("lucene")));
        double fts = seconds(() -> FullText.build(folder.resolve("fts.db"), texts));
        System.out.printf(Locale.ROOT, "FTS5 in %.1f s%n", fts);
        peers.add(new FullText(folder.resolve("fts.db")));
    }

    private interface Work {
        void run() throws Exception;
    }

    /** Processor time of the whole process: others at work on the machine do not count. */
    private static double seconds(Work work) throws Exception {
        var process = (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long begin = process.getProcessCpuTime();
        work.run();
        return (process.getProcessCpuTime() - begin) / 1e9;
    }

    private static long size(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.mapToLong(file -> file.toFile().length()).sum();
        }
    }

    private void rounds(Keystrokes keystrokes) throws Exception {
        Keystrokes few = keystrokes.every(Math.max(1, keystrokes.typed().size() / 300));
        for (int round = -1; round < options.number("rounds", 5); round++) {
            for (Peer peer : peers) {
                boolean slow = peer instanceof FullText || peer instanceof PlainLucene;
                double[] took = took(peer, slow ? few : keystrokes);
                if (round >= 0) {
                    times.computeIfAbsent(peer.name(), n -> new ArrayList<>()).add(took);
                }
            }
        }
    }

    private static double[] took(Peer peer, Keystrokes keystrokes) throws Exception {
        double[] took = new double[keystrokes.typed().size()];
        for (int i = 0; i < took.length; i++) {
            long begin = CLOCK.getCurrentThreadCpuTime();
            peer.ask(keystrokes.typed().get(i));
            took[i] = (CLOCK.getCurrentThreadCpuTime() - begin) / 1e3;
        }
        return took;
    }

    private void report() {
        List<double[]> ours = times.get(Ours.NAME);
        for (Peer peer : peers) {
            List<double[]> theirs = times.get(peer.name());
            System.out.printf(
                    "%-13s p50 %s us, p99 %s us; we take p50 %s, p99 %s of that%n",
                    peer.name(),
                    spread(theirs, theirs, 0.5, false),
                    spread(theirs, theirs, 0.99, false),
                    spread(ours, theirs, 0.5, true),
                    spread(ours, theirs, 0.99, true));
        }
    }

    private static Spread spread(List<double[]> ours, List<double[]> theirs, double share, boolean ratio) {
        double[] figures = new double[theirs.size()];
        for (int i = 0; i < figures.length; i++) {
            double peer = Spread.at(theirs.get(i), share);
            figures[i] = ratio ? Spread.at(ours.get(i), share) / peer : peer;
        }
        return Spread.of(figures);
    }

    private void slowest(Keystrokes keystrokes) {
        double[] last = times.get(Ours.NAME).getLast();
        int[] rank = new int[1];
        Stream.iterate(0, i -> i + 1)
                .limit(last.length)
                .sorted((a, b) -> Double.compare(last[b], last[a]))
                .filter(i -> rank[0]++ % 16 == 0)
                .limit(120)
                .forEach(i -> System.out.printf(
                        "%8.0f us  %s%n", last[i], keystrokes.typed().get(i)));
    }

    private record Ours(Search search) implements Peer {
        static final String NAME = "find";

        @Override
        public String name() {
            return NAME;
        }

        @Override
        public int ask(String typed) {
            return search.find(Question.of(typed)).hits().size();
        }
    }
}
