package hornbook.viewer.bench;

import hornbook.catalogue.entry.Marking;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.hornmap.HornMap;
import hornbook.catalogue.identify.Candidate;
import hornbook.catalogue.identify.NextLook;
import hornbook.catalogue.identify.Seen;
import hornbook.indexer.brief.BriefAnswer;
import hornbook.shared.job.OnBench;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the screen shows at one moment. What is being reckoned anew stays as it was until it is there.
 *
 * @param weighed null until the first answer
 * @param brief null until the first answer
 * @param open id of the candidate whose why is asked for; blank for unlisted; null for none
 * @param side what the left side shows
 * @param said what was done or went wrong, in a sentence; empty for nothing
 * @param undo number of the deed that can be taken back; null for none
 */
record BenchView(
        InHand horn,
        @Nullable Weighed weighed,
        @Nullable BriefAnswer brief,
        Asking asking,
        @Nullable String open,
        Side side,
        String said,
        @Nullable Long undo) {
    static final BenchView NOTHING =
            new BenchView(InHand.NOTHING, null, null, Asking.NOTHING, null, new Side.Look(), "", null);

    /** What the left side shows. */
    sealed interface Side {
        /** The look asked for. */
        record Look() implements Side {}

        /** All looks, to choose from. */
        record Choose() implements Side {}

        /** Horns that are in the shop, to choose from. */
        record Here(List<OnBench> horns) implements Side {
            /** Keeps its own copy. */
            public Here {
                horns = List.copyOf(horns);
            }
        }

        /** It is this: how that is known. */
        record Confirm(String model, String title) implements Side {}

        /** A new model from this horn. */
        record Entry() implements Side {}

        /** What is wrong with it. */
        record Wrong() implements Side {}

        /** Its cups, as those of the model it is or is likeliest to be. */
        record Cups(HornMap map) implements Side {}
    }

    /** Id of the model that it most likely is. */
    Optional<String> likeliest() {
        return weighed == null
                ? Optional.empty()
                : weighed.answer().candidates().stream().map(Candidate::id).findFirst();
    }

    BenchView with(InHand now) {
        return new BenchView(now, weighed, brief, asking, open, side, "", null);
    }

    BenchView with(Weighed now, Asking next) {
        return new BenchView(horn, now, brief, next, open, side, said, undo);
    }

    BenchView with(BriefAnswer now) {
        return new BenchView(horn, weighed, now, asking, open, side, said, undo);
    }

    BenchView with(Asking now) {
        return new BenchView(horn, weighed, brief, now, open, new Side.Look(), said, undo);
    }

    BenchView with(Side now) {
        return new BenchView(horn, weighed, brief, asking, open, now, "", null);
    }

    BenchView opening(@Nullable String candidate) {
        return new BenchView(horn, weighed, brief, asking, candidate, side, said, undo);
    }

    BenchView saying(String words, @Nullable Long deed) {
        return new BenchView(horn, weighed, brief, asking, open, side, words, deed);
    }

    /** The looks on offer, best first; those skipped come last. */
    List<NextLook> looks() {
        Weighed now = weighed;
        if (now == null) {
            return List.of();
        }
        return Stream.concat(
                        now.answer().next().stream().filter(l -> !horn.skipped().contains(l.trait())),
                        now.answer().next().stream().filter(l -> horn.skipped().contains(l.trait())))
                .toList();
    }

    /** What is offered of a trait, where it is. */
    Optional<NextLook> look(String trait) {
        return looks().stream().filter(l -> l.trait().equals(trait)).findFirst();
    }

    /** Whether that look waits: a lesser one still tells, or guards against harm. Its answer may be open already. */
    boolean waits(Trait trait) {
        return trait.cost().removesAPart() && look(trait.id()).isEmpty() && !horn.lookedAt(trait.id());
    }

    /** Whether that trait cannot be told without leaving a mark, and that may not be done now. */
    boolean forbidden(Trait trait) {
        Marking marking = trait.marking();
        return marking != null
                && marking.onlyWay()
                && !horn.lookedAt(trait.id())
                && (!horn.consent() || look(trait.id()).isEmpty());
    }

    /** Traits that are neither offered nor answered nor leave a mark, in the order of looking a horn over. */
    List<Trait> rest() {
        Weighed now = weighed;
        return now == null
                ? List.of()
                : now.catalogue().traits().values().stream()
                        .filter(t -> look(t.id()).isEmpty() && !horn.lookedAt(t.id()))
                        .filter(t -> t.marking() == null)
                        .toList();
    }

    /** Whether a look that leaves a mark may be taken: the owner agreed, and no lesser look guards against harm. */
    boolean mayMark(NextLook marking) {
        return horn.consent() && look(marking.trait()).isPresent();
    }

    /** How the values of the trait asked for are marked: as pressed just now, else as answered before. */
    Map<String, Boolean> marks() {
        Trait trait = asking.trait();
        if (trait == null || !asking.marked().isEmpty()) {
            return asking.marked();
        }
        Map<String, Boolean> marks = new LinkedHashMap<>();
        for (Seen seen : horn.looks(trait.id())) {
            switch (seen) {
                case Seen.OneOf one -> one.values().forEach(value -> marks.put(value, true));
                case Seen.Parts parts -> marks.putAll(parts.there());
                default -> {}
            }
        }
        return marks;
    }
}
