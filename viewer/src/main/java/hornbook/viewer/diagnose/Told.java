package hornbook.viewer.diagnose;

import hornbook.catalogue.diagnose.DiagnoseAnswer;
import hornbook.catalogue.estimate.EstimateAnswer;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was answered.
 *
 * @param tools those of the next check, each with where it lies
 * @param time what the cure's tasks may take on this horn, each once; missing where none occurs on it
 */
record Told(
        DiagnoseAnswer answer,
        List<ToolPlace> tools,
        @Nullable EstimateAnswer time) {
    /** Keeps its own copy. */
    Told {
        tools = List.copyOf(tools);
    }

    /**
     * A tool wanted.
     *
     * @param drawer id of its drawer or place; missing where the shop has none, or nobody knows where it lies
     * @param label of that drawer as written
     */
    record ToolPlace(String title, @Nullable String drawer, String label, boolean here) {}
}
