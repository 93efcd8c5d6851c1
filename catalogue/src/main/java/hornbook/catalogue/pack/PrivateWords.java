package hornbook.catalogue.pack;

import hornbook.shared.shop.Contact;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.store.Books;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What points to a customer: names, ways to reach them, codes. Notes are written by tired people; an entry that holds
 * any of these stays in the shop until somebody has taken it out.
 */
final class PrivateWords {
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}@+-]+");
    private static final Pattern DIGITS = Pattern.compile("\\D+");
    /** Shorter ones are everybody's words. */
    private static final int SHORTEST_NAME = 4;

    private static final int SHORTEST_NUMBER = 6;

    private final Set<String> words = new HashSet<>();
    private final Set<String> numbers = new HashSet<>();

    PrivateWords(Books books) {
        for (Contact contact : books.all(Contact.class)) {
            words.add(lower(contact.owner()));
            add(contact.name());
            add(contact.reach());
        }
        books.all(Horn.class).forEach(horn -> code(horn.ownerCode()));
        books.all(Job.class).forEach(job -> code(job.ownerCode()));
    }

    private void code(@org.jspecify.annotations.Nullable String owner) {
        if (owner != null && !owner.isBlank()) {
            words.add(lower(owner));
        }
    }

    private void add(String text) {
        for (String word : BETWEEN.split(text)) {
            if (word.length() >= SHORTEST_NAME) {
                words.add(lower(word));
            }
        }
        String digits = DIGITS.matcher(text).replaceAll("");
        if (digits.length() >= SHORTEST_NUMBER) {
            numbers.add(digits);
        }
    }

    /** Whether a text holds one of them: which of them is not said, as it would be printed. */
    Optional<String> in(String text) {
        for (String word : BETWEEN.split(text)) {
            if (words.contains(lower(word))) {
                return Optional.of("names a customer");
            }
        }
        String digits = DIGITS.matcher(text).replaceAll("");
        return numbers.stream().anyMatch(digits::contains)
                ? Optional.of("holds a customer's number")
                : Optional.empty();
    }

    private static String lower(String word) {
        return word.toLowerCase(Locale.ROOT);
    }
}
