package hornbook.viewer.cli;

import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_FOOTER;
import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_FOOTER_HEADING;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;

/** How a command's help is laid out: first a line that can be typed as it stands, kept in the command's footer. */
final class HelpPage {
    /** Wide enough that no example is broken in two. */
    private static final int WIDTH = 110;

    private HelpPage() {}

    static void openWithExamples(CommandLine line) {
        line.getCommandSpec().usageMessage().footerHeading("Example: ");
        line.getCommandSpec().usageMessage().width(WIDTH);
        line.setHelpSectionKeys(order(line.getHelpSectionKeys()));
        line.getSubcommands().values().forEach(HelpPage::openWithExamples);
    }

    private static List<String> order(List<String> usual) {
        List<String> keys = new ArrayList<>(usual);
        List<String> example = List.of(SECTION_KEY_FOOTER_HEADING, SECTION_KEY_FOOTER);
        keys.removeAll(example);
        keys.addAll(0, example);
        return keys;
    }
}
