package hornbook.viewer.jobs;

import hornbook.shared.shop.BadInput;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Field.Choice;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What several questions about a job have alike: plain choices, and fields that may be left empty. */
final class Given {
    private Given() {}

    static List<Choice> choices(String... words) {
        return Arrays.stream(words).map(word -> new Choice(word, word)).toList();
    }

    static @Nullable String orNull(String text) {
        return text.isEmpty() ? null : text;
    }

    /** Quoted minutes, where they were told. @throws BadInput where they are no time */
    static @Nullable Integer minutes(Answers answers, String field) {
        if (answers.text(field).isEmpty()) {
            return null;
        }
        int minutes = answers.whole(field, "quoted minutes");
        if (minutes <= 0) {
            throw new BadInput("quoted minutes: name one or more");
        }
        return minutes;
    }
}
