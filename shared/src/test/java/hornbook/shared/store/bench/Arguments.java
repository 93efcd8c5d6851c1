package hornbook.shared.store.bench;

import java.util.Arrays;
import java.util.List;

/** {@code --n 500 --seed 7} and the like. */
record Arguments(List<String> given) {
    static Arguments of(String[] given) {
        return new Arguments(Arrays.asList(given));
    }

    String text(String name, String otherwise) {
        int at = given.indexOf("--" + name);
        return at < 0 ? otherwise : given.get(at + 1);
    }

    int n(int otherwise) {
        return Integer.parseInt(text("n", Integer.toString(otherwise)));
    }

    long seed() {
        return Long.parseLong(text("seed", "20260930"));
    }
}
