package hornbook.viewer.cli;

import picocli.CommandLine;

/** A command with what can be done to its things, each a subcommand. */
final class Verbs {
    private Verbs() {}

    static CommandLine of(Object command, Object... verbs) {
        CommandLine line = new CommandLine(command);
        for (Object verb : verbs) {
            line.addSubcommand(verb);
        }
        return line;
    }
}
