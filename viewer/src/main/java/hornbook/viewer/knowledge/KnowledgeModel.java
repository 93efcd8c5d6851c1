package hornbook.viewer.knowledge;

import hornbook.catalogue.edit.Draft;
import hornbook.catalogue.edit.EntryBook;
import hornbook.catalogue.edit.Mend;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Kind;
import hornbook.viewer.card.Cards;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What is known, looked up and written down, without a widget. */
public final class KnowledgeModel {
    private final Work work;
    private final Supplier<EntryBook> books;
    private final Cards cards;
    private final Latest listing;
    private final Latest opening;
    private final Deque<String> before = new ArrayDeque<>();
    private Consumer<KnowledgeView> listener = view -> {};
    private KnowledgeView view = KnowledgeView.START;

    /** @param books the entries as they are at each asking; asked beside the window */
    public KnowledgeModel(Work work, Supplier<EntryBook> books, Cards cards) {
        this.work = work;
        this.books = books;
        this.cards = cards;
        this.listing = work.latest();
        this.opening = work.latest();
    }

    KnowledgeView view() {
        return view;
    }

    void onChange(Consumer<KnowledgeView> draw) {
        listener = draw;
        draw.accept(view);
    }

    void choose(Kind kind) {
        show(view.choosing(kind, ""));
        list();
    }

    void chooseBroken() {
        show(view.choosing(null, "").opening(null));
        list();
    }

    void filter(String words) {
        show(view.choosing(view.kind(), words));
        list();
    }

    /** Asks again, as the shop may have changed. What is being written stays as it is. */
    void refresh() {
        list();
        Opened open = view.open();
        if (open != null) {
            load(open.id());
        }
        EditModel edit = view.edit();
        if (edit != null) {
            work.read(progress -> books.get(), ends(edit::anew));
        }
    }

    private record Listed(Map<Kind, Integer> counts, List<Line> lines, EntryBook book) {}

    private void list() {
        Kind kind = view.kind();
        String words = view.filter();
        listing.ask(
                progress -> {
                    EntryBook book = books.get();
                    return new Listed(counts(book.catalogue()), lines(book.catalogue(), kind, words), book);
                },
                ends(listed -> show(view.listing(
                        listed.counts(), listed.lines(), listed.book().broken()))));
    }

    private static Map<Kind, Integer> counts(Catalogue catalogue) {
        Map<Kind, Integer> counts = new EnumMap<>(Kind.class);
        for (Kind kind : Kind.values()) {
            counts.put(kind, catalogue.all(kind).size());
        }
        return counts;
    }

    private static List<Line> lines(Catalogue catalogue, @Nullable Kind kind, String filter) {
        if (kind == null) {
            return List.of();
        }
        List<String> words = List.of(filter.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        return catalogue.all(kind).values().stream()
                .filter(entry -> words.stream().allMatch(word -> bears(entry, word)))
                .map(entry -> new Line(entry.id(), entry.title(), catalogue.isOwn(entry.id())))
                .toList();
    }

    private static boolean bears(Entry entry, String word) {
        return entry.id().contains(word)
                || entry.title().toLowerCase(Locale.ROOT).contains(word);
    }

    /** Opens an entry of the list. */
    void open(String id) {
        before.clear();
        load(id);
    }

    /** Opens another entry out of the open one; back leads to that one again. */
    void follow(String id) {
        Opened open = view.open();
        if (open != null) {
            before.push(open.id());
        }
        load(id);
    }

    private void load(String id) {
        opening.ask(progress -> opened(books.get(), id), ends(opened -> show(view.opening(opened.orElse(null)))));
    }

    private Optional<Opened> opened(EntryBook book, String id) {
        Catalogue catalogue = book.catalogue();
        return catalogue
                .entry(id)
                .flatMap(entry -> cards.card(entry.entryKind().word(), id)
                        .map(card -> new Opened(card, entry.provenance(), catalogue.isOwn(id), book.shipped(id))));
    }

    /** Writes a new entry of the chosen kind. */
    void create() {
        Kind kind = view.kind();
        if (kind != null) {
            begin(book -> Optional.of(EditModel.Start.blank(book, kind)));
        }
    }

    /** Changes the open entry; a shipped one is copied first. */
    void edit() {
        Opened open = view.open();
        if (open != null) {
            begin(book -> book.catalogue().entry(open.id()).map(entry -> EditModel.Start.of(book, Draft.of(entry))));
        }
    }

    /** Mends an own file that was set aside. */
    void mend(String file) {
        begin(book -> {
            Optional<Mend> mend = book.mend(file);
            return mend.map(found -> EditModel.Start.mending(book, found));
        });
    }

    private void begin(java.util.function.Function<EntryBook, Optional<EditModel.Start>> start) {
        work.read(
                progress -> start.apply(books.get()),
                ends(begun -> begun.ifPresentOrElse(
                        from -> show(view.editing(new EditModel(work, from, this::saved, this::left))),
                        () -> show(
                                view.saying("That file cannot be read as an entry. Mend it with a text editor, or take"
                                        + " it away; that can be undone.")))));
    }

    private void saved(Entry entry) {
        view = view.choosing(entry.entryKind(), view.filter()).saying("Saved: " + entry.title() + ".");
        open(entry.id());
        list();
    }

    private void left() {
        show(view.editing(null));
    }

    /** Asks whether the open entry is to go, with what names it. */
    void askToTakeAway() {
        Opened open = view.open();
        if (open != null && open.own()) {
            work.read(progress -> question(books.get(), open), ends(question -> show(view.asking(question))));
        }
    }

    private static String question(EntryBook book, Opened open) {
        if (open.shipped()) {
            return "The shop's own copy goes, and what was shipped holds again.";
        }
        List<String> names = book.namedBy(open.id());
        return names.isEmpty()
                ? "Nothing else names it."
                : "These name it, and would name nothing: "
                        + String.join(", ", names.subList(0, Math.min(names.size(), 5)))
                        + (names.size() > 5 ? " and " + (names.size() - 5) + " more." : ".");
    }

    void keep() {
        show(view.asking(null));
    }

    /** Takes the open entry away: the shop's own, never a shipped one. */
    void takeAway() {
        Opened open = view.open();
        if (open != null) {
            work.write(progress -> books.get().takeAway(open.id()), ends(under -> {
                String said = under.isPresent()
                        ? "What was shipped holds again."
                        : "Taken away: " + open.card().title() + ".";
                show(view.opening(null).saying(said));
                refresh();
                under.ifPresent(entry -> load(entry.id()));
            }));
        }
    }

    /** Takes an own file away that was set aside. */
    void takeAwayFile(String file) {
        work.write(
                progress -> {
                    books.get().takeAwayFile(file);
                    return file;
                },
                ends(gone -> {
                    show(view.saying("Taken away: " + gone + "."));
                    list();
                }));
    }

    /** Steps back: out of a form, to the entry before, out of the open one. */
    boolean back() {
        EditModel edit = view.edit();
        if (edit != null) {
            edit.putAway();
            return true;
        }
        if (view.open() == null) {
            return false;
        }
        opening.cancel();
        String earlier = before.poll();
        if (earlier == null) {
            show(view.opening(null));
        } else {
            load(earlier);
        }
        return true;
    }

    /** Puts the open entry away. */
    void close() {
        before.clear();
        show(view.opening(null));
    }

    private <A> Ends<A> ends(Consumer<A> answered) {
        return new Ends<>(answered, thrown -> show(view.saying(String.valueOf(thrown.getMessage()))));
    }

    private void show(KnowledgeView now) {
        view = now;
        listener.accept(now);
    }
}
