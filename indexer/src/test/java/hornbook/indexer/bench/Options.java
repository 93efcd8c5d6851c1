package hornbook.indexer.bench;

import java.util.List;

/** {@code --records 50000 --rounds 5}. */
record Options(List<String> given) {
    static Options of(String... line) {
        return new Options(List.of(line));
    }

    int number(String name, int otherwise) {
        return Integer.parseInt(text(name, Integer.toString(otherwise)));
    }

    String text(String name, String otherwise) {
        int at = given.indexOf("--" + name);
        return at < 0 ? otherwise : given.get(at + 1);
    }

    boolean has(String name) {
        return given.contains("--" + name);
    }
}
