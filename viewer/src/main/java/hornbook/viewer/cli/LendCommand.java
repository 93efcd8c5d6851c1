package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.MemberState;
import hornbook.shared.stock.ToolBook;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Members of sets of tools go and come. */
@Command(
        name = "lend",
        header = "Notes that a member of a set of tools is lent, back, missing or broken.",
        footer = "hornbook stock lend tool-taps-dies tool-taps-dies/die/M3x0.5 --to B-04")
final class LendCommand extends ToolDeeds.ToolDeed {
    @Parameters(index = "0", paramLabel = "SET", description = "The set's number, as tool-taps-dies.")
    String set = "";

    @Parameters(
            index = "1",
            paramLabel = "MEMBER",
            description = "Its designation or size as written, or set/kind/member.")
    String member = "";

    @Option(names = "--to", paramLabel = "CODE", description = "Lent to whom: a code, never a name.")
    @Nullable
    String to;

    @Option(
            names = "--state",
            paramLabel = "STATE",
            description = "good (it is back), missing, broken, stub, galled, chipped, worn.")
    String state = "good";

    LendCommand(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        ToolBook tools = workshop.toolBook();
        return to != null ? tools.lend(set, member, to) : tools.state(set, member, state());
    }

    @Override
    String tool(Workshop workshop) {
        return set;
    }

    private MemberState state() {
        return Arrays.stream(MemberState.values())
                .filter(s -> s.name().equalsIgnoreCase(state) && s != MemberState.LENT)
                .findFirst()
                .orElseThrow(() -> new BadInput("“" + state + "” is no state: write one of "
                        + Arrays.stream(MemberState.values())
                                .filter(s -> s != MemberState.LENT)
                                .map(s -> s.name().toLowerCase(Locale.ROOT))
                                .collect(Collectors.joining(", "))));
    }
}
