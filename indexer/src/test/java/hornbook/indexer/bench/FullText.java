package hornbook.indexer.bench;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** SQLite's full-text search as it comes: prefix index of 1 to 3 letters, bm25, all of the words, the last as a prefix. */
final class FullText implements Peer {
    private final Connection connection;
    private final PreparedStatement ask;

    FullText(Path file) throws SQLException {
        connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        ask = connection.prepareStatement(
                "select id, title from card where card match ? order by bm25(card) limit " + ROWS);
    }

    static void build(Path file, Texts texts) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            try (Statement statement = connection.createStatement()) {
                statement.execute("pragma journal_mode = wal");
                statement.execute("create virtual table card using fts5(id unindexed, title, body, prefix='1 2 3')");
            }
            connection.setAutoCommit(false);
            try (PreparedStatement insert = connection.prepareStatement("insert into card values (?, ?, ?)")) {
                texts.each(one -> add(insert, one));
            }
            connection.commit();
        }
    }

    private static void add(PreparedStatement insert, Texts.One one) {
        try {
            insert.setString(1, one.id());
            insert.setString(2, one.title());
            insert.setString(3, one.body());
            insert.executeUpdate();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public String name() {
        return "FTS5";
    }

    @Override
    public int ask(String typed) throws SQLException {
        List<String> words = new ArrayList<>();
        for (String word : typed.split("[^\\p{L}\\p{N}]+")) {
            if (!word.isEmpty()) {
                words.add("\"" + word + "\"");
            }
        }
        if (words.isEmpty()) {
            return 0;
        }
        ask.setString(1, String.join(" ", words) + (typed.endsWith(" ") ? "" : "*"));
        int read = 0;
        try (ResultSet rows = ask.executeQuery()) {
            while (rows.next()) {
                read += rows.getString(1).isEmpty() || rows.getString(2) == null ? 0 : 1;
            }
        }
        return read;
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
