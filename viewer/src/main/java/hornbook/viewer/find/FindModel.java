package hornbook.viewer.find;

import hornbook.indexer.search.Answer;
import hornbook.indexer.search.Hit;
import hornbook.indexer.search.Question;
import hornbook.viewer.card.Block;
import hornbook.viewer.card.Card;
import hornbook.viewer.card.Cards;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What the screen Find knows and does, without a widget. */
public final class FindModel {
    private static final int MOST_HITS = 40;

    private final Function<Question, Answer> search;
    private final Cards cards;
    private final Latest asking;
    private final Latest opening;
    private final Consumer<Set<String>> light;
    private final Deque<Card> before = new ArrayDeque<>();
    private Consumer<FindView> listener = view -> {};
    private FindView view = FindView.NOTHING;

    /**
     * @param search the one search; asked beside the window
     * @param light told of the drawers in which what was found lies
     */
    public FindModel(Work work, Function<Question, Answer> search, Cards cards, Consumer<Set<String>> light) {
        this.search = search;
        this.cards = cards;
        this.asking = work.latest();
        this.opening = work.latest();
        this.light = light;
    }

    FindView view() {
        return view;
    }

    void onChange(Consumer<FindView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /** Asks for what the box now holds; an older question is forgotten. */
    void typed(String text) {
        if (text.isBlank()) {
            asking.cancel();
            light.accept(Set.of());
            show(FindView.of(text, List.of(), null, view.card()));
        } else {
            ask(text);
        }
    }

    private void ask(String text) {
        asking.ask(
                progress -> search.apply(new Question(text, MOST_HITS, Set.of())),
                ends(answer -> answered(text, answer)));
    }

    private void answered(String text, Answer answer) {
        boolean again = text.equals(view.text());
        show(FindView.of(text, answer.hits(), answer.asOf(), view.card()));
        if (!again) {
            close();
        }
        light.accept(drawers());
    }

    /** Asks again, as the shop may have changed. */
    void refresh() {
        if (!view.text().isBlank()) {
            ask(view.text());
        }
        Card open = view.card();
        if (open != null) {
            load(open.kind(), open.id());
        }
    }

    private Set<String> drawers() {
        return view.hits().stream().map(Hit::drawer).filter(Objects::nonNull).collect(Collectors.toUnmodifiableSet());
    }

    void step(int rows) {
        choose(view.chosen() + rows);
    }

    /** An open card goes: keys that act would else mean it and not the hit that is lit. */
    void choose(int hit) {
        int before = view.chosen();
        show(view.choosing(hit));
        if (view.chosen() != before) {
            close();
        }
    }

    /** Opens the chosen hit. */
    void open() {
        view.chosenHit().ifPresent(hit -> {
            before.clear();
            load(hit.kind(), hit.id());
        });
    }

    /** Opens a record that another screen names. */
    public void show(String kind, String id) {
        before.clear();
        load(kind, id);
    }

    /** Where what is open lies, or else what is chosen. */
    Optional<Lying> lying() {
        Card open = view.card();
        if (open != null) {
            return open.blocks().stream()
                    .filter(Block.Lies.class::isInstance)
                    .map(Block.Lies.class::cast)
                    .findFirst()
                    .map(lies -> new Lying(lies.drawer(), open.kind().equals("lot") ? open.id() : ""));
        }
        return view.chosenHit()
                .filter(hit -> hit.drawer() != null)
                .map(hit -> new Lying(
                        Objects.requireNonNull(hit.drawer()), hit.kind().equals("lot") ? hit.id() : ""));
    }

    /**
     * Where something lies.
     *
     * @param lot its number where it is a lot; else empty
     */
    record Lying(String drawer, String lot) {}

    /** Opens another record out of the open card; back leads to that card again. */
    void follow(String kind, String id) {
        Card open = view.card();
        if (open != null) {
            before.push(open);
        }
        load(kind, id);
    }

    private void load(String kind, String id) {
        opening.ask(progress -> cards.card(kind, id), ends(card -> opened(id, card)));
    }

    private void opened(String id, Optional<Card> card) {
        show(card.map(view::opening).orElseGet(() -> view.troubled("There is no card for " + id + ".")));
    }

    /** Puts the open card away, or goes back to the one it was opened from. */
    boolean back() {
        if (view.card() == null) {
            return false;
        }
        opening.cancel();
        show(view.opening(before.poll()));
        return true;
    }

    /** Puts all cards away. */
    void close() {
        before.clear();
        back();
    }

    private <A> Ends<A> ends(Consumer<A> answered) {
        return new Ends<>(answered, thrown -> show(view.troubled(String.valueOf(thrown.getMessage()))));
    }

    private void show(FindView now) {
        view = now;
        listener.accept(now);
    }
}
