package hornbook.viewer.jobs;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.store.Books;
import hornbook.viewer.pick.Option;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The horns that were here before, those of the latest jobs first: told by model, name on them, serial and owner's code. */
public final class HornsHere {
    private final Books books;
    private final Supplier<Catalogue> catalogue;

    /** @param catalogue asked each time, as the shop's own entries may have changed */
    public HornsHere(Books books, Supplier<Catalogue> catalogue) {
        this.books = books;
        this.catalogue = catalogue;
    }

    List<Option> options() {
        Map<String, Job> last = new HashMap<>();
        books.all(Job.class)
                .forEach(job -> last.merge(
                        job.horn(), job, (one, other) -> one.tookIn().isBefore(other.tookIn()) ? other : one));
        Comparator<Horn> latest = Comparator.comparing(horn -> Optional.ofNullable(last.get(horn.id()))
                .map(job -> job.tookIn().toString())
                .orElse(""));
        return books.all(Horn.class).stream()
                .sorted(latest.reversed())
                .map(horn -> new Option(horn.id(), title(horn), note(horn, last.get(horn.id()))))
                .toList();
    }

    Optional<Horn> horn(String id) {
        return books.find(Horn.class, id);
    }

    String title(Horn horn) {
        Catalogue known = catalogue.get();
        String model = horn.model().equals("unlisted") ? horn.instrument() + ", not placed" : known.title(horn.model());
        String sold = horn.soldAs() == null || horn.soldAs().isBlank() ? "" : "sold as " + known.title(horn.soldAs());
        return joined(", ", model, sold, horn.serial());
    }

    private static String note(Horn horn, @org.jspecify.annotations.Nullable Job last) {
        String owner = Stream.of(last == null ? "" : last.ownerCode(), horn.ownerCode())
                .filter(code -> code != null && !code.isBlank())
                .findFirst()
                .orElse("");
        String here = last == null ? "" : "here " + last.tookIn() + ", " + last.id();
        return joined("  \u00b7  ", horn.id(), owner, here);
    }

    private static String joined(String between, String... parts) {
        return Stream.of(parts).filter(part -> !part.isBlank()).collect(Collectors.joining(between));
    }
}
