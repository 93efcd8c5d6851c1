package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.EntryReader;
import hornbook.catalogue.entry.EntryWriter;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Nearest;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.store.Books;

/** Writes down what a horn turned out to be; each as one deed that can be undone. */
public final class Confirm {
    private final Catalogue catalogue;
    private final Books books;

    public Confirm(Catalogue catalogue, Books books) {
        this.catalogue = catalogue;
        this.books = books;
    }

    /**
     * It is this.
     *
     * @param model id of a model, or {@code unlisted}
     * @param by how that is known; by its traits alone it is likely, by anything else sure
     * @return the horn as it now stands
     * @throws BadInput where the horn or the model is not known
     */
    public Horn is(String horn, String model, Confirmation by) {
        Horn known = horn(horn);
        Horn now = model.equals(Experience.UNLISTED) ? placed(known, model, null, by) : placed(known, model(model), by);
        books.write("horn " + horn + " is " + title(model), w -> w.put(now));
        return now;
    }

    /**
     * Makes an entry of a horn that no entry describes: what was seen of it, as a model of its own, to be edited. The
     * horn is then one of it.
     *
     * @param job on which it was seen
     * @param make id of the make
     * @param pattern the maker's name for it
     */
    public Model entryFrom(String horn, String job, String make, String pattern) {
        Horn known = horn(horn);
        if (!catalogue.makes().containsKey(make)) {
            throw new BadInput("make “" + make + "” is not known"
                    + Nearest.of(make, catalogue.makes().keySet())
                            .map(n -> ": perhaps " + n + " is meant")
                            .orElse(": make an entry for it first"));
        }
        if (books.find(Job.class, job).filter(j -> j.horn().equals(horn)).isEmpty()) {
            throw new BadInput("job “" + job + "” is no job of horn " + horn + ": “hornbook horn show " + horn
                    + "” lists its jobs");
        }
        String json = new HornEntry(catalogue, books, known, job).json(make, pattern);
        Model model = (Model) new EntryReader().read(Kind.MODEL, json);
        if (catalogue.entry(model.id()).isPresent()) {
            throw new BadInput("there is an entry " + model.id() + " already: give the pattern another name");
        }
        books.write("entry " + model.id() + " from horn " + horn, w -> {
            w.entry("model/" + model.id() + ".json", new EntryWriter().write(model));
            w.put(placed(known, model, Confirmation.TAKEN_APART));
        });
        return model;
    }

    private Horn horn(String id) {
        return books.find(Horn.class, id)
                .orElseThrow(() ->
                        new BadInput("horn “" + id + "” is not in the books: “hornbook find --kind horn” lists them"));
    }

    private Model model(String id) {
        Model model = catalogue.models().get(id);
        if (model == null) {
            throw new BadInput("model “" + id + "” is not known: "
                    + Nearest.of(id, catalogue.models().keySet())
                            .map(n -> "perhaps " + n + " is meant")
                            .orElse("write unlisted where no entry describes the horn"));
        }
        return model;
    }

    private String title(String model) {
        return model.equals(Experience.UNLISTED) ? model : model(model).title();
    }

    private static Horn placed(Horn horn, Model model, Confirmation by) {
        return placed(horn, model.id(), model.make(), by);
    }

    private static Horn placed(
            Horn horn, String model, @org.jspecify.annotations.Nullable String make, Confirmation by) {
        String sureness =
                model.equals(Experience.UNLISTED) ? "not placed" : by == Confirmation.TRAITS ? "likely" : "sure";
        return new Horn(
                horn.id(),
                model,
                make,
                horn.instrument(),
                horn.serial(),
                horn.soldAs(),
                horn.yearAbout(),
                horn.ownerCode(),
                horn.firstSeen(),
                by.words(),
                sureness,
                horn.note());
    }
}
