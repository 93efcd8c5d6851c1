package hornbook.viewer.bench;

import hornbook.catalogue.identify.Question;
import hornbook.catalogue.identify.Seen;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The horn in hand and what was seen of it.
 *
 * @param horn its number in the books; null for one that is not there
 * @param job on which it is here; null where it is on none
 * @param title what a person calls it
 * @param looks in the order in which they were taken
 * @param held traits of which the books hold a look, and whether they hold a number and a name
 * @param serial as read; blank where it was not read
 * @param mark name on it, as read; blank where there is none
 * @param skipped traits that the person would rather not look at now
 * @param watched id of a model that is always shown; null for none
 * @param consent whether its owner agreed to looks that leave a mark
 * @param plain without what this shop learned
 */
record InHand(
        @Nullable String horn,
        @Nullable String job,
        String title,
        List<Seen> looks,
        Set<String> held,
        String serial,
        String mark,
        Set<String> skipped,
        @Nullable String watched,
        boolean consent,
        boolean plain) {
    /** A horn of which nothing is known. */
    static final InHand NOTHING = new InHand(null, null, "", List.of(), Set.of(), "", "", Set.of(), null, false, false);

    /** Among what the books hold: the number, and the name on it. */
    static final String SERIAL = "serial";

    static final String MARK = "mark";

    private static final String UNREADABLE = "?";

    InHand {
        looks = List.copyOf(looks);
        held = Set.copyOf(held);
        skipped = Set.copyOf(skipped);
    }

    /** What is asked about it. What the books hold and the person took back is said to be unreadable. */
    Question question() {
        return new Question(looks, said(SERIAL, serial), said(MARK, mark), null, horn, plain, consent, null);
    }

    private @Nullable String said(String what, String read) {
        return !read.isBlank() ? read : held.contains(what) ? UNREADABLE : null;
    }

    boolean empty() {
        return horn == null && looks.isEmpty() && serial.isBlank() && mark.isBlank() && watched == null;
    }

    boolean lookedAt(String trait) {
        return looks.stream().anyMatch(seen -> seen.trait().equals(trait));
    }

    List<Seen> looks(String trait) {
        return looks.stream().filter(seen -> seen.trait().equals(trait)).toList();
    }

    /** With that look, instead of what was said of its trait before and in its place. */
    InHand seeing(Seen look) {
        List<Seen> now = new ArrayList<>();
        boolean placed = false;
        for (Seen seen : looks) {
            if (!seen.trait().equals(look.trait())) {
                now.add(seen);
            } else if (!placed) {
                now.add(look);
                placed = true;
            }
        }
        if (!placed) {
            now.add(look);
        }
        return with(now, serial, mark);
    }

    /** Without what was said of a trait; what the books hold of it no longer counts. */
    InHand without(String trait) {
        if (held.contains(trait)) {
            return seeing(new Seen.CannotTell(trait));
        }
        return with(looks.stream().filter(s -> !s.trait().equals(trait)).toList(), serial, mark);
    }

    InHand withSerial(String read) {
        return with(looks, read, mark);
    }

    InHand withMark(String read) {
        return with(looks, serial, read);
    }

    private InHand with(List<Seen> now, String number, String name) {
        return new InHand(horn, job, title, now, held, number, name, skipped, watched, consent, plain);
    }

    InHand skipping(String trait) {
        Set<String> more = new LinkedHashSet<>(skipped);
        more.add(trait);
        return new InHand(horn, job, title, looks, held, serial, mark, more, watched, consent, plain);
    }

    InHand agreed() {
        return new InHand(horn, job, title, looks, held, serial, mark, skipped, watched, true, plain);
    }

    InHand plain(boolean without) {
        return new InHand(horn, job, title, looks, held, serial, mark, skipped, watched, consent, without);
    }

    /** The same horn now that it is in the books; its looks are not there yet. */
    InHand takenIn(String number, @Nullable String onJob) {
        return new InHand(number, onJob, title, looks, held, serial, mark, skipped, watched, consent, plain);
    }

    InHand called(String name) {
        return new InHand(horn, job, name, looks, held, serial, mark, skipped, watched, consent, plain);
    }

    /** Traits of its looks, each once. */
    List<String> traits() {
        return looks.stream().map(Seen::trait).distinct().toList();
    }
}
