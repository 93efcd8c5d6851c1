package hornbook.viewer.knowledge;

import hornbook.catalogue.edit.Choice;
import hornbook.catalogue.edit.Draft;
import hornbook.catalogue.edit.EntryBook;
import hornbook.catalogue.edit.Field;
import hornbook.catalogue.edit.Forms;
import hornbook.catalogue.edit.Mend;
import hornbook.catalogue.edit.Naming;
import hornbook.catalogue.edit.Spot;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Kind;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** One entry being written, without a widget: each key is checked beside the window, nothing is saved until told. */
final class EditModel {
    private static final Spot ID = Spot.of("id");
    private static final Spot TITLE = Spot.of("title");
    private static final Spot SOURCE = Spot.of("source");
    private static final Spot SURENESS = Spot.of("sureness");
    private static final int JOBS_OFFERED = 8;

    private final Work work;
    private final Start start;
    private final Consumer<Entry> saved;
    private final Runnable left;
    private final Latest checking;
    private final Latest offering;
    private EntryBook book;
    private Consumer<EditView> listener = view -> {};
    private EditView view;
    private boolean idGiven;

    /**
     * What is begun with.
     *
     * @param draft as it stood
     * @param fields what its kind asks for
     * @param jobs from which something may have been learned
     * @param fresh whether it is a new entry, whose id is still to be made
     * @param own whether the shop wrote what it says of its source
     * @param mended path of the own file that is to be mended
     */
    record Start(
            EntryBook book,
            Draft draft,
            List<Field> fields,
            List<Choice> jobs,
            boolean fresh,
            boolean own,
            @Nullable String mended) {

        static Start blank(EntryBook book, Kind kind) {
            return new Start(book, Draft.blank(kind), Forms.of(kind), book.jobs(), true, false, null);
        }

        static Start of(EntryBook book, Draft draft) {
            boolean own = book.catalogue().isOwn(draft.text(ID));
            return new Start(book, draft, Forms.of(draft.kind()), book.jobs(), false, own, null);
        }

        static Start mending(EntryBook book, Mend mend) {
            Draft draft = mend.draft();
            return new Start(book, draft, Forms.of(draft.kind()), book.jobs(), false, true, mend.file());
        }
    }

    /**
     * @param saved told of the entry once it is in the books
     * @param left called when it is put away unsaved
     */
    EditModel(Work work, Start start, Consumer<Entry> saved, Runnable left) {
        this.work = work;
        this.start = start;
        this.book = start.book();
        this.saved = saved;
        this.left = left;
        this.checking = work.latest();
        this.offering = work.latest();
        Origin origin = start.own() ? Origin.before(start.draft().text(SURENESS)) : Origin.NOT_TOLD;
        this.view = new EditView(start.draft(), 0, null, origin, false, false, "");
        tell(origin);
    }

    EditView view() {
        return view;
    }

    void onChange(Consumer<EditView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /** The fields of the form. Where it comes from is asked for apart; the id of a known entry stays. */
    List<Field> fields() {
        return start.fields().stream()
                .filter(field -> !field.name().equals("source") && !field.name().equals("sureness"))
                .filter(field -> !field.name().equals("id") || idAsked())
                .sorted(Comparator.comparing(field -> !field.name().equals("title")))
                .toList();
    }

    private boolean idAsked() {
        return start.fresh() || start.mended() != null;
    }

    boolean fresh() {
        return start.fresh();
    }

    /** Whether what the entry said of its source may stand: only where the shop itself said it. */
    boolean mayStand() {
        return start.own();
    }

    String sourceBefore() {
        return start.draft().text(SOURCE);
    }

    void text(Spot spot, String words) {
        idGiven |= spot.equals(ID);
        change(words.isEmpty() ? view.draft().without(spot) : view.draft().set(spot, words), 0);
    }

    /** Words in a line of a list: a blank line stays a line. */
    void line(Spot spot, String words) {
        change(view.draft().set(spot, words), 0);
    }

    void value(Spot spot, @Nullable JsonNode value) {
        change(value == null ? view.draft().without(spot) : view.draft().set(spot, value), 0);
    }

    void add(Spot list, JsonNode value) {
        change(view.draft().add(list, value), 1);
    }

    /** Puts something under a name, where nothing stands under it yet. */
    void put(Spot spot, JsonNode value) {
        if (view.draft().at(spot).isEmpty()) {
            change(view.draft().set(spot, value), 1);
        }
    }

    void takeOut(Spot spot) {
        change(view.draft().without(spot), 1);
    }

    private void change(Draft draft, int turns) {
        boolean idFollows = start.fresh() && !idGiven;
        String id = idFollows ? book.idFor(draft.kind(), draft.text(TITLE)) : "";
        boolean make = idFollows && !draft.text(ID).equals(id);
        show(view.drafting(make ? draft.set(ID, id) : draft, turns));
        check();
    }

    /** Takes an answer to where it comes from and how sure it is. */
    void tell(Origin told) {
        Draft draft = view.draft().set(SOURCE, told.source(sourceBefore())).set(SURENESS, told.sureness());
        view = view.drafting(draft, 0);
        show(view.telling(told));
        check();
    }

    private void check() {
        Draft draft = view.draft();
        EntryBook now = book;
        checking.ask(progress -> now.propose(draft), ends(proposal -> show(view.proposing(proposal))));
    }

    /** The entries changed under it: what it says stays, what that changes is reckoned again. */
    void anew(EntryBook now) {
        book = now;
        check();
    }

    /** What may be meant by what was typed, given when it is found. */
    void offer(List<String> names, String typed, Spot spot, Consumer<List<Choice>> found) {
        Draft draft = view.draft();
        Naming naming = new Naming(book.catalogue());
        offering.ask(progress -> naming.choices(names, typed, draft, spot), ends(found));
    }

    /** The shop's jobs that bear the words. */
    void offerJobs(String typed, Consumer<List<Choice>> found) {
        String words = typed.strip().toLowerCase(Locale.ROOT);
        found.accept(start.jobs().stream()
                .filter(job -> (job.text() + " " + job.title())
                        .toLowerCase(Locale.ROOT)
                        .contains(words))
                .limit(JOBS_OFFERED)
                .toList());
    }

    /** What a person calls what a field names; empty where that is no entry. */
    String called(String id) {
        return new Naming(book.catalogue()).title(id);
    }

    void save() {
        if (view.busy()) {
            return;
        }
        Draft draft = view.draft();
        EntryBook now = book;
        show(view.saving());
        work.write(progress -> now.put(draft.kind(), draft.json(), start.mended()), ends(saved));
    }

    /** Whether anything was written since it was begun. */
    boolean changed() {
        Draft without = view.draft().without(SOURCE).without(SURENESS);
        boolean told = !Objects.equals(
                view.origin(), start.own() ? Origin.before(start.draft().text(SURENESS)) : Origin.NOT_TOLD);
        return told || !without.equals(start.draft().without(SOURCE).without(SURENESS));
    }

    /** Puts it away unsaved; where something was written, only when told a second time. */
    void putAway() {
        if (view.leaving() || !changed()) {
            checking.cancel();
            left.run();
        } else {
            show(view.asking());
        }
    }

    private <A> Ends<A> ends(Consumer<A> answered) {
        return new Ends<>(answered, thrown -> show(view.troubled(String.valueOf(thrown.getMessage()))));
    }

    private void show(EditView now) {
        view = now;
        listener.accept(now);
    }
}
