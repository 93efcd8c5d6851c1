package hornbook.shared.thread;

import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.Reading;
import hornbook.shared.measure.StandardSizes;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Asks a thread question as a command line would: {@code ask("diameter 2.95, turns 5, over 3.0 mm")}. */
final class Ask {
    static final StandardSizes SIZES = StandardSizes.load();
    static final WhichThread WHICH = new WhichThread(SIZES);
    private static final ThreadQuestionReader READER = new ThreadQuestionReader(SIZES.reader(), LengthUnit.MILLIMETRE);

    private Ask() {}

    static ThreadAnswer ask(String options) {
        return WHICH.answer(read(options).orThrow());
    }

    static Reading<ThreadQuestion> read(String options) {
        Map<String, String> given = new HashMap<>();
        for (String option : options.split(", ")) {
            int space = option.indexOf(' ');
            given.put(option.substring(0, space), option.substring(space + 1));
        }
        return READER.read(new ThreadWords(
                get(given, "diameter"),
                get(given, "hole"),
                get(given, "pitch"),
                get(given, "tpi"),
                get(given, "turns"),
                get(given, "over"),
                get(given, "form"),
                get(given, "percent"),
                get(given, "wall"),
                get(given, "through")));
    }

    private static Optional<String> get(Map<String, String> given, String name) {
        return Optional.ofNullable(given.get(name));
    }
}
