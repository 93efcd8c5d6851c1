package hornbook.viewer.diagnose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the pane shows at one moment.
 *
 * @param symptom as it was asked about; blank before
 * @param checks what was asked, in order, each with what it said; null where it did not tell
 * @param told null before the first answer; stays while a newer one is reckoned
 * @param said what was done or went wrong, in a sentence; empty for nothing
 */
record DiagnoseView(
        Complaint complaint,
        String symptom,
        List<Said> checks,
        @Nullable Told told,
        String said) {
    static final DiagnoseView NOTHING = new DiagnoseView(Complaint.NONE, "", List.of(), null, "");

    DiagnoseView {
        checks = List.copyOf(checks);
    }

    /** A check that was made, or could not be. */
    record Said(String check, String question, @Nullable Boolean yes) {}

    DiagnoseView about(Complaint now) {
        return new DiagnoseView(now, now.words(), List.of(), null, "");
    }

    DiagnoseView asking(String words) {
        return new DiagnoseView(complaint, words, List.of(), null, "");
    }

    DiagnoseView answering(Said said) {
        return without(said.check()).with(said);
    }

    private DiagnoseView with(Said more) {
        List<Said> now = new ArrayList<>(checks);
        now.add(more);
        return new DiagnoseView(complaint, symptom, now, told, "");
    }

    DiagnoseView without(String check) {
        List<Said> left =
                checks.stream().filter(said -> !said.check().equals(check)).toList();
        return new DiagnoseView(complaint, symptom, left, told, "");
    }

    DiagnoseView with(Told now) {
        return new DiagnoseView(complaint, symptom, checks, now, "");
    }

    DiagnoseView saying(String words) {
        return new DiagnoseView(complaint, symptom, checks, told, words);
    }

    /** What the checks said, by their ids. */
    Map<String, Boolean> answers() {
        Map<String, Boolean> answers = new LinkedHashMap<>();
        for (Said said : checks) {
            Boolean yes = said.yes();
            if (yes != null) {
                answers.put(said.check(), yes);
            }
        }
        return answers;
    }

    /** Checks that did not tell. */
    Set<String> passed() {
        Stream<String> dumb = checks.stream().filter(said -> said.yes() == null).map(Said::check);
        return new LinkedHashSet<>(dumb.toList());
    }
}
