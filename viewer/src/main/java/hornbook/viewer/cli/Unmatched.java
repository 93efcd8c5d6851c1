package hornbook.viewer.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says which word of a line was not understood, and what was perhaps meant. */
final class Unmatched {
    private Unmatched() {}

    static String describe(UnmatchedArgumentException wrong) {
        CommandLine command = wrong.getCommandLine();
        String word = wrong.getUnmatched().getFirst();
        boolean option = word.startsWith("-");
        boolean root = command.getParent() == null;
        String kind = option ? "option" : root ? "command" : "word";
        String place = root ? "" : " for " + command.getCommandName();
        String meant = nearest(option ? word.replaceFirst("=.*", "") : word, known(command, option))
                .map(near -> "; did you mean " + near + "?")
                .orElse("");
        return "unknown " + kind + " " + word + place + meant;
    }

    private static List<String> known(CommandLine command, boolean option) {
        return option
                ? List.copyOf(command.getCommandSpec().optionsMap().keySet())
                : command.getSubcommands().entrySet().stream()
                        .filter(entry -> !entry.getValue()
                                .getCommandSpec()
                                .usageMessage()
                                .hidden())
                        .map(Map.Entry::getKey)
                        .toList();
    }

    /** The nearest of the known words, if it is near enough to have been meant: a slip in every three letters. */
    static Optional<String> nearest(String word, List<String> known) {
        return known.stream()
                .filter(name -> slips(word, name) <= Math.max(1, name.length() / 3))
                .min(Comparator.comparingInt(name -> slips(word, name)));
    }

    /** Insertions, deletions, replacements and swaps of neighbours (optimal string alignment distance). */
    static int slips(String typed, String name) {
        int[][] d = new int[typed.length() + 1][name.length() + 1];
        for (int i = 0; i <= typed.length(); i++) {
            for (int j = 0; j <= name.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : cheapest(d, typed, name, i, j);
            }
        }
        return d[typed.length()][name.length()];
    }

    private static int cheapest(int[][] d, String typed, String name, int i, int j) {
        int change = typed.charAt(i - 1) == name.charAt(j - 1) ? 0 : 1;
        int best = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped = i > 1
                && j > 1
                && typed.charAt(i - 1) == name.charAt(j - 2)
                && typed.charAt(i - 2) == name.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }
}
