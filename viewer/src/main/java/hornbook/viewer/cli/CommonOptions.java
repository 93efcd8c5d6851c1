package hornbook.viewer.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The options every command has, before or after its name. */
final class CommonOptions {
    @Option(
            names = "--shop",
            paramLabel = "DIR",
            scope = ScopeType.INHERIT,
            order = 100,
            description = "The shop's folder; otherwise HORNBOOK_SHOP names it, or the usual folder is used.")
    @Nullable
    Path shop;

    @Option(
            names = "--json",
            scope = ScopeType.INHERIT,
            order = 101,
            description = "Answer as one JSON value on standard output.")
    boolean json;

    @Option(
            names = "--as-of",
            paramLabel = "DATE",
            scope = ScopeType.INHERIT,
            order = 102,
            converter = Day.class,
            description = "Take this day for today, as in 2026-09-30.")
    @Nullable
    LocalDate asOf;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            order = 103,
            description = "This page.")
    boolean help;
}
