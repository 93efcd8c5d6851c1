package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Turns what went wrong into one line for the person and an exit code. */
final class Faults {
    private static final Logger LOG = Logger.getLogger(Faults.class.getName());

    private final Surroundings around;
    private final Path log;

    Faults(Surroundings around, Path log) {
        this.around = around;
        this.log = log;
    }

    /** A line that cannot be understood: what is wrong with it, and the nearest thing that would be right. */
    int usage(ParameterException wrong, String[] line) {
        CommandLine command = wrong.getCommandLine();
        String what = switch (wrong) {
            case UnmatchedArgumentException unmatched -> Unmatched.describe(unmatched);
            case MissingParameterException missing -> belowNought(line).orElse(told(missing));
            default -> told(wrong);
        };
        say(what + (what.endsWith("?") ? " See " : "; see ")
                + command.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.BAD_INPUT;
    }

    private static String told(ParameterException wrong) {
        return uncapitalised(firstLine(wrong.getMessage()));
    }

    /** A word such as -3 mm is taken for an option, and then its size is missed. */
    private static Optional<String> belowNought(String[] line) {
        return Arrays.stream(line)
                .filter(word -> word.matches("-[\\d.,].*"))
                .findFirst()
                .map(word -> "“" + word + "” is below nought: a size is not");
    }

    /** Something a command threw. */
    int thrown(Throwable fault) {
        return switch (fault) {
            case BadInput bad -> told(bad, ExitCode.BAD_INPUT);
            case ShopUnavailable unavailable -> told(unavailable, ExitCode.SHOP_UNAVAILABLE);
            default -> own(fault);
        };
    }

    private int told(RuntimeException fault, int code) {
        say(firstLine(fault.getMessage()));
        if (fault.getCause() != null) {
            LOG.log(Level.INFO, fault.getMessage(), fault);
        }
        return code;
    }

    private int own(Throwable fault) {
        LOG.log(Level.SEVERE, "not foreseen", fault);
        say("this is a fault of Hornbook's own (" + fault.getClass().getSimpleName() + "); " + log
                + " tells where it happened");
        return ExitCode.OWN_FAULT;
    }

    private void say(String line) {
        around.err().println("hornbook: " + line);
        around.err().flush();
    }

    private static String uncapitalised(String text) {
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    private static String firstLine(@Nullable String message) {
        List<String> lines = message == null ? List.of() : message.lines().toList();
        return lines.isEmpty() ? "no reason given" : lines.getFirst();
    }
}
