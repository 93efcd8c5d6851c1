package hornbook.indexer.bench;

import hornbook.shared.shop.Job;
import hornbook.shared.shop.Lot;
import hornbook.shared.store.Books;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences as they stand in the job notes of a shop: what was said there, shuffled, with sizes, serials and slips. */
final class Sentences {
    private static final Pattern MILLIMETRES = Pattern.compile("(\\d+(?:\\.\\d+)?) mm");

    private final List<String> pieces = new ArrayList<>();
    private final Random random;

    Sentences(Books books, Random random) {
        this.random = random;
        for (Job job : books.all(Job.class)) {
            List.of(job.complaint(), job.wentNote(), job.note()).stream()
                    .filter(text -> !text.isBlank())
                    .forEach(pieces::add);
        }
        books.all(Lot.class).stream().map(Lot::title).distinct().forEach(pieces::add);
    }

    /** From so many to so many sentences. */
    String some(int least, int most) {
        int many = least + random.nextInt(most - least + 1);
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < many; i++) {
            text.append(text.isEmpty() ? "" : ". ").append(one());
        }
        return text.toString();
    }

    private String one() {
        String said = piece() + ", " + piece();
        return switch (random.nextInt(12)) {
            case 0 -> said + " " + size();
            case 1 -> said + " number " + (1_000 + random.nextInt(900_000));
            case 2 -> slip(said);
            default -> said;
        };
    }

    /** Some are said often, most seldom. */
    private String piece() {
        double often = random.nextDouble();
        return pieces.get((int) (often * often * pieces.size()));
    }

    private String slip(String text) {
        int at = random.nextInt(Math.max(1, text.length()));
        return text.substring(0, at)
                + (char) ('a' + random.nextInt(26))
                + text.substring(Math.min(at + 1, text.length()));
    }

    private String size() {
        return random.nextInt(3) == 0
                ? inches(1 + random.nextDouble() * 10)
                : millimetres(1 + random.nextDouble() * 60);
    }

    /** The same dimensions with other numbers, every fifth in inches. */
    String otherSize(String dimensions) {
        Matcher size = MILLIMETRES.matcher(dimensions);
        return size.replaceAll(found -> {
            double other = Double.parseDouble(found.group(1)) * (0.8 + random.nextDouble() * 0.4);
            return random.nextInt(5) == 0 ? inches(other) : millimetres(other);
        });
    }

    private static String millimetres(double size) {
        return String.format(Locale.ROOT, "%.2f mm", size);
    }

    private static String inches(double size) {
        return String.format(Locale.ROOT, ".%03d\"", Math.min(999, Math.round(size / 0.0254)));
    }
}
