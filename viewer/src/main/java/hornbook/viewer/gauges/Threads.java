package hornbook.viewer.gauges;

import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.Reading;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.measure.Thread;
import hornbook.shared.thread.ThreadAnswer;
import hornbook.shared.thread.ThreadAnswer.LookAlike;
import hornbook.shared.thread.ThreadQuestionReader;
import hornbook.shared.thread.ThreadWords;
import hornbook.shared.thread.WhichThread;
import java.util.Optional;

/** What the thread pane asks: which thread, and how the most alike of its look-alikes lies over it. */
public final class Threads {
    private final StandardSizes tables;
    private final WhichThread which;
    private final ThreadQuestionReader reader;

    public Threads(StandardSizes tables) {
        this.tables = tables;
        this.which = new WhichThread(tables);
        this.reader = new ThreadQuestionReader(tables.reader(), LengthUnit.MILLIMETRE);
    }

    /** The answer, or which field cannot be read and why. */
    Reading<ThreadAnswer> which(ThreadWords words) {
        return reader.read(words).map(which::answer);
    }

    /** The first look-alike that binds, drawn from the tables. */
    Optional<Overlay> overlay(ThreadAnswer answer) {
        return answer.lookAlikes().stream()
                .filter(alike -> alike.bindsAfterTurns().isPresent())
                .findFirst()
                .flatMap(this::overlay);
    }

    private Optional<Overlay> overlay(LookAlike alike) {
        return profile(alike.screw())
                .flatMap(screw -> profile(alike.hole())
                        .map(hole -> new Overlay(
                                alike.screw(),
                                screw,
                                alike.hole(),
                                hole,
                                alike.bindsAfterTurns().orElseThrow())));
    }

    private Optional<Profile> profile(String designation) {
        return tables.reader().thread(designation).found().map(Threads::profile);
    }

    private static Profile profile(Thread thread) {
        return new Profile(
                thread.pitch().mm(), thread.major().mm(), thread.system().angle());
    }
}
