package hornbook.viewer.tools;

import hornbook.shared.stock.ToolCard;
import hornbook.viewer.ask.Ask;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is shown of the tools at one moment.
 *
 * @param tools those that want something first
 * @param chosen id of the one that is open; empty while none is
 * @param ask the question about a member of a set; null while nothing is asked
 * @param trouble what went wrong, in a sentence
 */
record ToolsView(
        List<ToolCard> tools,
        String chosen,
        @Nullable Ask ask,
        @Nullable String trouble) {
    static final ToolsView NOTHING = new ToolsView(List.of(), "", null, null);

    ToolsView with(List<ToolCard> all) {
        List<ToolCard> sorted = all.stream()
                .sorted(Comparator.comparing((ToolCard tool) ->
                                tool.wanting().isEmpty() && tool.state().equals("good"))
                        .thenComparing(tool -> tool.title().toLowerCase(java.util.Locale.ROOT)))
                .toList();
        return new ToolsView(sorted, chosen, ask, trouble);
    }

    Optional<ToolCard> open() {
        return tools.stream().filter(tool -> tool.id().equals(chosen)).findFirst();
    }

    ToolsView choosing(String tool) {
        return new ToolsView(tools, tool, null, null);
    }

    ToolsView asking(@Nullable Ask question) {
        return new ToolsView(tools, chosen, question, null);
    }

    ToolsView troubled(String why) {
        return ask == null
                ? new ToolsView(tools, chosen, null, why)
                : new ToolsView(tools, chosen, ask.troubled(why), null);
    }
}
