package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Seller;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Horn;
import hornbook.shared.store.Books;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Makes questions ready: adds what the books hold of the horn asked about. What was said now goes before that. */
final class Cases {
    static final String MEMBER = "family-member";
    private static final String MARK = "maker-mark";

    private final Catalogue catalogue;
    private final @Nullable Books books;

    Cases(Catalogue catalogue, @Nullable Books books) {
        this.catalogue = catalogue;
        this.books = books;
    }

    Case of(Question question, Experience experience) {
        Optional<Horn> horn = Optional.ofNullable(question.horn()).map(this::horn);
        List<Seen> seen = new ArrayList<>(question.seen());
        horn.map(h -> experience.looks(h.id())).ifPresent(own -> add(own, seen));
        instrument(question, horn).ifPresent(i -> add(List.of(i), seen));
        return new Case(
                seen,
                serial(question, horn),
                mark(question, horn),
                horn.map(Horn::model).orElse(null),
                horn.map(Horn::id).orElse(null),
                question.model(),
                question.plain());
    }

    private static void add(List<Seen> more, List<Seen> seen) {
        Set<String> known = seen.stream().map(Seen::trait).collect(Collectors.toSet());
        more.stream().filter(s -> !known.contains(s.trait())).forEach(seen::add);
    }

    private Horn horn(String id) {
        if (books == null) {
            throw new BadInput("horn " + id + ": no shop is open: name one with --shop DIR");
        }
        return books.find(Horn.class, id)
                .orElseThrow(() ->
                        new BadInput("horn “" + id + "” is not in the books: “hornbook find --kind horn” lists them"));
    }

    private Optional<Seen> instrument(Question question, Optional<Horn> horn) {
        String instrument = question.instrument();
        if (instrument != null) {
            return Optional.of(new SeenReader(catalogue).read(MEMBER + "=" + instrument));
        }
        return horn.map(Horn::instrument).filter(i -> !i.isBlank()).map(i -> new Seen.OneOf(MEMBER, List.of(i)));
    }

    private static @Nullable SerialReading serial(Question question, Optional<Horn> horn) {
        if (question.serial() != null && !question.serial().isBlank()) {
            return SerialReading.of(question.serial());
        }
        try {
            return horn.map(Horn::serial)
                    .filter(s -> s.matches(".*[0-9].*"))
                    .map(SerialReading::of)
                    .orElse(null);
        } catch (BadInput e) {
            return null;
        }
    }

    private @Nullable String mark(Question question, Optional<Horn> horn) {
        if (question.mark() != null && !question.mark().isBlank()) {
            return question.mark();
        }
        Optional<String> seen = question.seen().stream()
                .filter(s -> s instanceof Seen.OneOf one && one.trait().equals(MARK))
                .map(Seen::value)
                .findFirst();
        return seen.orElseGet(() -> horn.map(Horn::soldAs).map(this::name).orElse(null));
    }

    private String name(String soldAs) {
        return catalogue.entry(soldAs).map(e -> ((Seller) e).title()).orElse(soldAs);
    }
}
