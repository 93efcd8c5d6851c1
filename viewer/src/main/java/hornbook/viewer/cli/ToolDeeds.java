package hornbook.viewer.cli;

import hornbook.shared.stock.ToolCard;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is done about tools: each shows the tool as it is after. */
final class ToolDeeds {
    private ToolDeeds() {}

    /** What a deed on a tool left behind. */
    record After(Deed deed, ToolCard tool) {}

    /** One thing done about a tool. */
    abstract static class ToolDeed extends OneDeed {
        ToolDeed(Frame frame) {
            super(frame);
        }

        /** The tool that it was done to. */
        abstract String tool(Workshop workshop);

        @Override
        final Left left(Workshop workshop, Deed done) {
            After after = new After(done, ToolCommand.shown(workshop, tool(workshop)));
            return new Left(after, out -> ToolCommand.print(out, after.tool()));
        }
    }

    /** One thing done about a tool that is there. */
    abstract static class OnTool extends ToolDeed {
        @Parameters(index = "0", paramLabel = "TOOL", description = "Its number.")
        String id = "";

        OnTool(Frame frame) {
            super(frame);
        }

        @Override
        final String tool(Workshop workshop) {
            return id;
        }
    }

    /** New in the shop. */
    @Command(
            name = "new",
            header = "Writes down a tool that is new in the shop.",
            footer = "hornbook tool new \"spring hook, brass\" --in \"hook 1\" --serves \"needle springs\"")
    static final class New extends ToolDeed {
        @Parameters(paramLabel = "WHAT", description = "What it is.")
        String title = "";

        @Option(names = "--in", paramLabel = "PLACE", required = true, description = "The drawer or place where it is.")
        String place = "";

        @Option(names = "--serves", paramLabel = "WORDS", description = "What it is for.")
        String serves = "";

        New(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.toolBook().add(title, serves, place);
        }

        @Override
        String tool(Workshop workshop) {
            return workshop.tools().all().getLast().id();
        }
    }

    /** Elsewhere. */
    @Command(
            name = "put",
            header = "Says where a tool is from now on.",
            footer = "hornbook tool put tool-caliper \"hook 1\"")
    static final class Put extends OnTool {
        @Parameters(index = "1", paramLabel = "PLACE", description = "A drawer or place, by number or label.")
        String to = "";

        Put(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.toolBook().put(id, to);
        }
    }

    /** Its known error. */
    @Command(
            name = "checked",
            header = "Writes down how far a gauge is off, found today against a known piece.",
            footer = "hornbook tool checked tool-caliper --off -0.02 --against \"the 25 mm block\"")
    static final class Checked extends OnTool {
        @Option(
                names = "--off",
                paramLabel = "MM",
                required = true,
                description = "What it reads less what is true, in mm: +0.02 where it reads too much.")
        String error = "";

        @Option(names = "--against", paramLabel = "WORDS", description = "The known piece.")
        String against = "";

        Checked(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.toolBook().checked(id, error, against.isBlank() ? "" : "against " + against);
        }
    }

    /** One more in a set. */
    @Command(
            name = "member",
            header = "Adds a member to a set: a die, a drill, a punch.",
            footer = "hornbook tool member tool-taps-dies die 4-48")
    static final class Member extends OnTool {
        @Parameters(index = "1", paramLabel = "KIND", description = "die, tap, drill, reamer, collet, punch …")
        String kind = "";

        @Parameters(index = "2", paramLabel = "SIZE", description = "Its designation or size, as M3x0.5.")
        String member = "";

        Member(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.toolBook().addMember(id, kind, member);
        }
    }
}
