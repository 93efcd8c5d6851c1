package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.EntryCheck;
import hornbook.catalogue.entry.EntryReader;
import hornbook.catalogue.entry.EntryWriter;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Make;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Nearest;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.store.Books;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes down what a horn turned out to be; each as one deed that can be undone. */
public final class Confirm {
    private final Catalogue catalogue;
    private final Books books;

    public Confirm(Catalogue catalogue, Books books) {
        this.catalogue = catalogue;
        this.books = books;
    }

    /**
     * It is this: the looks go down with it. By its traits alone it is likely, by anything else sure.
     *
     * @return the horn as it now stands
     * @throws BadInput where horn, model or job is not known
     */
    public Horn is(MadeOut made) {
        Horn known = horn(made.horn());
        Optional<Model> model =
                made.model().equals(Experience.UNLISTED) ? Optional.empty() : Optional.of(model(made.model()));
        if (made.job() != null) {
            job(made);
        }
        Horn now = placed(known, made, model.map(Model::make).orElse(null));
        LooksWritten looks = new LooksWritten(books, known, held(known), made.looks());
        books.write("horn " + known.id() + " is " + model.map(Model::title).orElse(Experience.UNLISTED), w -> {
            looks.into(w, made.job());
            w.put(now);
        });
        return now;
    }

    /**
     * Makes an entry of a horn that no entry describes: what was seen of it, as a model of its own, to be edited. The
     * horn is then one of it.
     *
     * @param seen the horn, and on which job it was seen; its model does not count
     * @throws BadInput where the make is not known, or the entry would be none
     */
    public Model entryFrom(MadeOut seen, NewModel wanted) {
        Horn known = placed(horn(seen.horn()), seen, null);
        String job = job(seen);
        Make make = make(wanted, job);
        List<Seen> held = held(known);
        String json = new HornEntry(catalogue, books, known, job, together(held, seen.looks()))
                .json(make, wanted.pattern(), wanted.years());
        Model model = checked(json);
        LooksWritten looks = new LooksWritten(books, known, held, seen.looks());
        books.write("entry " + model.title() + " from horn " + known.id(), w -> {
            if (wanted.makeIsNew()) {
                w.entry("make/" + make.id() + ".json", new EntryWriter().write(make));
            }
            w.entry("model/" + model.id() + ".json", new EntryWriter().write(model));
            looks.into(w, job);
            w.put(placed(known, seen.as(model.id(), Confirmation.TAKEN_APART), make.id()));
        });
        return model;
    }

    private String job(MadeOut seen) {
        String job = seen.job();
        if (job == null) {
            throw new BadInput("say on which job horn " + seen.horn() + " was seen: “hornbook horn show " + seen.horn()
                    + "” lists its jobs");
        }
        if (books.find(Job.class, job).filter(j -> j.horn().equals(seen.horn())).isEmpty()) {
            throw new BadInput("job “" + job + "” is no job of horn " + seen.horn() + ": “hornbook horn show "
                    + seen.horn() + "” lists its jobs");
        }
        return job;
    }

    private Model checked(String json) {
        Model model = (Model) new EntryReader().read(Kind.MODEL, json);
        String file = "model/" + model.id() + ".json";
        if (catalogue.entry(model.id()).isPresent()) {
            throw new BadInput("there is an entry " + model.id() + " already: give the pattern another name");
        }
        new EntryCheck(catalogue)
                .flaws(Kind.MODEL, file, new EntryWriter().write(model)).stream()
                        .findFirst()
                        .ifPresent(problem -> {
                            throw new BadInput(problem.line());
                        });
        return model;
    }

    private Make make(NewModel wanted, String job) {
        return wanted.makeIsNew() ? newMake(wanted.make(), job) : knownMake(wanted.make());
    }

    private Make newMake(String name, String job) {
        String id = "k-" + HornEntry.slug(name);
        if (id.length() < 3 || catalogue.entry(id).isPresent()) {
            throw new BadInput(
                    id.length() < 3
                            ? "make “" + name + "”: a name in letters is wanted"
                            : "there is a make " + id + " already: choose it, or give another name");
        }
        return new Make(id, name.strip(), List.of(), null, null, null, "this shop, " + job, "one horn");
    }

    private Make knownMake(String id) {
        Make make = catalogue.makes().get(id);
        if (make == null) {
            throw new BadInput("make “" + id + "” is not known"
                    + Nearest.of(id, catalogue.makes().keySet())
                            .map(n -> ": perhaps " + n + " is meant")
                            .orElse(": make an entry for it first"));
        }
        return make;
    }

    private List<Seen> held(Horn horn) {
        return new FindingLooks(catalogue, books).looks(books.where(Finding.class, "horn", horn.id()));
    }

    /** What was seen now goes before what the books hold. */
    private static List<Seen> together(List<Seen> held, List<Seen> now) {
        Set<String> traits = now.stream().map(Seen::trait).collect(Collectors.toSet());
        return Stream.concat(held.stream().filter(s -> !traits.contains(s.trait())), now.stream())
                .filter(s -> !s.trait().equals(Cases.MEMBER))
                .toList();
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

    private static Horn placed(Horn horn, MadeOut made, @Nullable String make) {
        String sureness = made.model().equals(Experience.UNLISTED)
                ? "not placed"
                : made.by() == Confirmation.TRAITS ? "likely" : "sure";
        String serial = made.serial();
        return new Horn(
                horn.id(),
                made.model(),
                make,
                instrument(made).orElse(horn.instrument()),
                serial == null || serial.isBlank() ? horn.serial() : serial.strip(),
                horn.soldAs(),
                horn.yearAbout(),
                horn.ownerCode(),
                horn.firstSeen(),
                made.by().words(),
                sureness,
                horn.note());
    }

    private static Optional<String> instrument(MadeOut made) {
        return made.looks().stream()
                .filter(s -> s.trait().equals(Cases.MEMBER)
                        && s instanceof Seen.OneOf(String _, var values)
                        && values.size() == 1)
                .map(Seen::value)
                .findFirst();
    }
}
