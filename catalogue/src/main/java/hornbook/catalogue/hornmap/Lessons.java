package hornbook.catalogue.hornmap;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.EntryWriter;
import hornbook.catalogue.entry.Model;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.Writing;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Offers what a job taught (map, order of taking down, pads, openings) to the entry of the horn's model, with the job as
 * source. Nothing the entry says is replaced.
 */
public final class Lessons {
    private final Catalogue catalogue;
    private final Books books;

    public Lessons(Catalogue catalogue, Books books) {
        this.catalogue = catalogue;
        this.books = books;
    }

    /** What the model's entry would gain; empty where it would gain nothing, or the horn is not placed for sure. */
    public Optional<Lesson> of(String job) {
        return taught(job).filter(taught -> !taught.says().isEmpty()).map(Taught::lesson);
    }

    /**
     * Writes it into the entry, as one deed.
     *
     * @throws BadInput where there is nothing to teach
     */
    public Deed teach(String job) {
        Model model = learned(job);
        return books.write("what " + job + " taught of " + model.title(), writing(model));
    }

    /**
     * Writes it into the entry as part of another deed.
     *
     * @throws BadInput where there is nothing to teach
     */
    public Consumer<Writing> with(String job) {
        return writing(learned(job));
    }

    private static Consumer<Writing> writing(Model model) {
        return w -> w.entry("model/" + model.id() + ".json", new EntryWriter().write(model));
    }

    private Model learned(String job) {
        return taught(job)
                .filter(found -> !found.says().isEmpty())
                .map(Taught::model)
                .orElseThrow(() -> new BadInput(
                        job + " has nothing to teach: its horn must be placed for sure, and something measured on it"
                                + " that its model's entry does not say"));
    }

    private Optional<Taught> taught(String id) {
        Job job = books.find(Job.class, id)
                .orElseThrow(() -> new BadInput("there is no job " + id + ": look it up with “hornbook find”"));
        return books.find(Horn.class, job.horn())
                .filter(horn -> horn.sureness().equals("sure"))
                .flatMap(horn -> Optional.ofNullable(catalogue.models().get(horn.model())))
                .map(model -> Taught.of(books, job, model));
    }
}
