package hornbook.viewer.bench;

import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitKind;
import hornbook.catalogue.identify.Seen;
import hornbook.catalogue.identify.SeenReader;
import hornbook.indexer.brief.BriefAnswer;
import hornbook.shared.shop.BadInput;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What the screen Bench knows and does, without a widget. Of several questions under way the newest counts. */
public final class BenchModel {
    static final String MEMBER = "family-member";

    private final Bench bench;
    private final BenchDeeds deeds;
    private final Latest weighing;
    private final Latest briefing;
    private final Latest laying;
    private Consumer<BenchView> listener = view -> {};
    private BenchView view = BenchView.NOTHING;

    public BenchModel(Work work, Bench bench, BenchBook book) {
        this.bench = bench;
        this.deeds = new BenchDeeds(this, work, bench, book);
        this.weighing = work.latest();
        this.briefing = work.latest();
        this.laying = work.latest();
    }

    BenchView view() {
        return view;
    }

    void onChange(Consumer<BenchView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /**
     * Puts a horn on the bench.
     *
     * @param kind horn for one of the books, job for the one that is here on it, model for one that may be of it
     */
    public void lay(String kind, String id) {
        switch (kind) {
            case "horn" -> lay(() -> bench.horn(id));
            case "job" -> lay(() -> bench.job(id));
            case "model" -> lay(() -> bench.model(id));
            default -> throw new IllegalArgumentException(kind + " cannot lie on a bench");
        }
    }

    /** Clears the bench for another horn. */
    void anew() {
        laying.cancel();
        laid(InHand.NOTHING);
    }

    private void lay(Supplier<InHand> horn) {
        laying.ask(progress -> horn.get(), ends(this::laid));
    }

    private void laid(InHand horn) {
        show(new BenchView(
                horn,
                view.weighed(),
                view.brief(),
                Asking.NOTHING,
                horn.watched(),
                new BenchView.Side.Look(),
                "",
                null));
        ask();
    }

    /** Asks again, as the shop may have changed. */
    void refresh() {
        ask();
    }

    private void see(InHand horn) {
        show(view.with(horn));
        ask();
    }

    /** Weighs what is in hand anew, and then the brief. */
    void ask() {
        InHand horn = view.horn();
        briefing.cancel();
        weighing.ask(progress -> bench.weigh(horn), ends(weighed -> weighed(horn, weighed)));
    }

    private void weighed(InHand horn, Weighed weighed) {
        show(view.with(weighed, next(weighed)));
        briefing.ask(progress -> bench.brief(horn), ends(this::briefed));
    }

    private void briefed(BriefAnswer brief) {
        show(view.with(brief));
    }

    /** Stays with a look that was chosen and not answered; else the instrument first, then the best. */
    private Asking next(Weighed weighed) {
        Trait now = view.asking().trait();
        InHand horn = view.horn();
        if (now != null && !horn.lookedAt(now.id()) && !horn.skipped().contains(now.id())) {
            return view.asking();
        }
        return Asking.of(weighed.catalogue().traits().get(best(weighed)));
    }

    private String best(Weighed weighed) {
        InHand horn = view.horn();
        if (!horn.lookedAt(MEMBER) && !horn.skipped().contains(MEMBER)) {
            return MEMBER;
        }
        return view.with(weighed, Asking.NOTHING).looks().stream()
                .map(look -> look.trait())
                .filter(trait -> !horn.skipped().contains(trait))
                .findFirst()
                .orElse("");
    }

    /** Asks for that look. */
    void choose(String trait) {
        Weighed weighed = view.weighed();
        Trait wanted = weighed == null ? null : weighed.catalogue().traits().get(trait);
        if (wanted != null && view.forbidden(wanted)) {
            show(view.saying(
                    wanted.title() + ": it leaves a mark, and waits for the owner\u2019s yes and for looks that guard"
                            + " against harm.",
                    null));
        } else if (wanted != null) {
            show(view.with(Asking.of(wanted)));
        }
    }

    /** Values are to be marked one after the other, or no longer. */
    void several(boolean now) {
        show(view.with(view.asking().several(now)));
    }

    /** A value was pressed: it is the answer, or one of several. */
    void press(String value) {
        Trait trait = view.asking().trait();
        if (trait == null) {
            return;
        }
        if (view.asking().several()) {
            show(view.with(view.asking().marking(value, trait.kind() == TraitKind.MANY)));
        } else {
            see(view.horn().seeing(new Seen.OneOf(trait.id(), List.of(value))));
        }
    }

    /** Takes the values that were marked. */
    void done() {
        Trait trait = view.asking().trait();
        Map<String, Boolean> marked = view.asking().marked();
        if (trait != null && !marked.isEmpty()) {
            write(
                    trait.kind() == TraitKind.MANY
                            ? new Seen.Parts(trait.id(), marked).value()
                            : String.join("|", marked.keySet()));
        }
    }

    /** Takes what was written: a size, words read off the horn, or values as a command would name them. */
    void write(String text) {
        Trait trait = view.asking().trait();
        Weighed weighed = view.weighed();
        if (trait == null || weighed == null || text.isBlank()) {
            return;
        }
        try {
            see(view.horn().seeing(new SeenReader(weighed.catalogue()).read(trait.id() + "=" + text.strip())));
        } catch (BadInput refused) {
            show(view.saying(trouble(refused), null));
        }
    }

    void cannotTell() {
        Trait trait = view.asking().trait();
        if (trait != null) {
            see(view.horn().seeing(new Seen.CannotTell(trait.id())));
        }
    }

    /** The horn has nothing of the sort. */
    void notThere() {
        Trait trait = view.asking().trait();
        if (trait != null) {
            see(view.horn().seeing(new Seen.Absent(trait.id())));
        }
    }

    /** Not now: the next best look instead. */
    void skip() {
        Trait trait = view.asking().trait();
        Weighed weighed = view.weighed();
        if (trait != null && weighed != null) {
            show(view.with(view.horn().skipping(trait.id())));
            show(view.with(Asking.of(weighed.catalogue().traits().get(best(weighed)))));
        }
    }

    void serial(String read) {
        if (!read.strip().equals(view.horn().serial())) {
            see(view.horn().withSerial(read.strip()));
        }
    }

    void mark(String read) {
        if (!read.strip().equals(view.horn().mark())) {
            see(view.horn().withMark(read.strip()));
        }
    }

    void takeBack(String trait) {
        see(view.horn().without(trait));
    }

    /** Takes the newest answer back. */
    void takeBackLast() {
        List<String> traits = view.horn().traits();
        if (!traits.isEmpty()) {
            takeBack(traits.getLast());
        }
    }

    /** Counts only what entries state, or again what this shop learned. */
    void plain(boolean without) {
        see(view.horn().plain(without));
    }

    /** Opens why a candidate stands where it does, or closes it. */
    void open(String candidate) {
        show(view.opening(candidate.equals(view.open()) ? null : candidate));
    }

    /** Shows the horns that are in the shop, to choose one. */
    void lookRound() {
        laying.ask(progress -> bench.here(), ends(horns -> side(new BenchView.Side.Here(horns))));
    }

    /** Shows the cups of the likeliest model, with what was read on this horn; again puts them away. */
    void cups() {
        if (view.side() instanceof BenchView.Side.Cups) {
            side(new BenchView.Side.Look());
            return;
        }
        cups(view.likeliest().orElse(""));
    }

    /** Shows the cups of that model, with what was read on this horn. */
    void cups(String model) {
        InHand horn = view.horn();
        laying.ask(progress -> bench.cups(horn, model), ends(map -> side(new BenchView.Side.Cups(map))));
    }

    void side(BenchView.Side side) {
        show(view.with(side));
    }

    /** What is written down and printed of it. */
    BenchDeeds deeds() {
        return deeds;
    }

    /** One step back inside the screen. */
    boolean back() {
        if (!(view.side() instanceof BenchView.Side.Look)) {
            show(view.with(new BenchView.Side.Look()));
            return true;
        }
        return false;
    }

    <A> Ends<A> ends(Consumer<A> answered) {
        return new Ends<>(answered, thrown -> show(view.saying(trouble(thrown), null)));
    }

    private static String trouble(Throwable thrown) {
        @Nullable String said = thrown.getMessage();
        return said == null ? "That did not work (" + thrown.getClass().getSimpleName() + ")." : said;
    }

    void show(BenchView now) {
        view = now;
        listener.accept(now);
    }
}
