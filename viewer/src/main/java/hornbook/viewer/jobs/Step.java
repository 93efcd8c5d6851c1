package hornbook.viewer.jobs;

import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.pick.Option;
import hornbook.viewer.pick.Pick;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What comes next in an act. */
public sealed interface Step {
    /** After a deed there is nothing more to do. */
    Consumer<JobsModel> NO_MORE = model -> {};

    /** The shop is asked, beside the window, what comes next. */
    record Reads(Supplier<Step> next) implements Step {}

    /**
     * A question.
     *
     * @param deed done with the answers, beside the window; what it gives is done in the window after
     */
    record Asks(Ask ask, Function<Answers, Consumer<JobsModel>> deed) implements Step {}

    /**
     * A choice.
     *
     * @param taken what comes next when one was taken
     * @param search finds others by the letters typed; null narrows those that are there
     */
    record Picks(
            Pick pick,
            Function<String, Step> taken,
            @Nullable Function<String, List<Option>> search) implements Step {
        Picks(Pick pick, Function<String, Step> taken) {
            this(pick, taken, null);
        }
    }

    /** A deed, done beside the window; what it gives is done in the window after. */
    record Does(Supplier<Consumer<JobsModel>> deed) implements Step {
        /** After which nothing more is done. */
        static Does only(Runnable deed) {
            return new Does(() -> {
                deed.run();
                return NO_MORE;
            });
        }
    }

    /** Nothing is written: the window goes on. */
    record Goes(Consumer<JobsModel> on) implements Step {}

    /** A question whose deed is all there is. */
    static Step ask(Ask ask, Consumer<Answers> deed) {
        return new Asks(ask, answers -> {
            deed.accept(answers);
            return NO_MORE;
        });
    }
}
