package hornbook.shared.measure;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Reads a thread's designation in the writings people use. */
record ThreadReader(ThreadTable table) {
    private static final String FORMS =
            "is no thread designation read here: write M2.5, M2.5x0.45, 2.6x0.45, 3-48, 4-36 old-ASME, 1/8-40 BSW, 6 BA"
                    + " or S3";
    private static final int LONGEST = 60;
    private static final int SUGGESTED = 3;
    private static final int SLIPS = 2;

    Reading<List<Thread>> meanings(String text) {
        String plain = Writing.plain(text);
        if (plain.isEmpty()) {
            return new Reading.Refused<>(text, "no thread is written: write one such as M2.5x0.45 or 3-48");
        }
        if (plain.length() > LONGEST) {
            return Reading.refused(plain, "is too long for a thread designation");
        }
        return ThreadGrammar.parse(plain)
                .map(writing -> known(plain, writing))
                .orElseGet(() -> Reading.refused(plain, FORMS + slip(plain)));
    }

    private Reading<List<Thread>> known(String plain, ThreadWriting writing) {
        List<Thread> meant = table.meant(writing);
        if (writing.pitch().isEmpty() && meant.size() > 1) {
            return Reading.refused(plain, "does not say its pitch: it can be " + names(meant));
        }
        return meant.isEmpty()
                ? Reading.refused(
                        plain,
                        "is no standard thread we know; the nearest are " + names(table.nearest(writing, SUGGESTED)))
                : Reading.read(meant);
    }

    private static String names(List<Thread> threads) {
        return threads.stream().map(Thread::designation).collect(Collectors.joining(", "));
    }

    /** One or two slips of the finger from a designation: said, never taken. */
    private String slip(String plain) {
        String typed = bare(plain);
        return table.threads().stream()
                .map(Thread::designation)
                .filter(known -> distance(typed, bare(known)) <= Math.min(SLIPS, typed.length() / 3))
                .min(Comparator.comparingInt(known -> distance(typed, bare(known))))
                .map(known -> " (near: " + known + ")")
                .orElse("");
    }

    private static String bare(String text) {
        return text.toLowerCase(Locale.ROOT).replace(" ", "");
    }

    private static int distance(String from, String to) {
        int[] above = new int[to.length() + 1];
        for (int column = 0; column <= to.length(); column++) {
            above[column] = column;
        }
        for (int row = 1; row <= from.length(); row++) {
            int corner = above[0];
            above[0] = row;
            for (int column = 1; column <= to.length(); column++) {
                int change = corner + (from.charAt(row - 1) == to.charAt(column - 1) ? 0 : 1);
                corner = above[column];
                above[column] = Math.min(change, 1 + Math.min(above[column], above[column - 1]));
            }
        }
        return above[to.length()];
    }
}
