package hornbook.viewer.cli;

import hornbook.catalogue.identify.Answer;
import hornbook.catalogue.identify.Candidate;
import hornbook.catalogue.identify.NextLook;
import hornbook.catalogue.identify.Reason;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** What horn is this? */
@Command(
        name = "identify",
        header = "What horn it may be, how sure that is, and what to look at next.",
        footer = "hornbook identify --instrument alto --see bell-brace=three-point --see octave-mechanism=auto-slide")
final class IdentifyCommand implements Callable<Integer> {
    private static final int SHOWN = 5;

    @Mixin
    SeeOptions see = new SeeOptions();

    private final Frame frame;

    IdentifyCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.reading(workshop -> {
            Answer answer = workshop.identify().answer(see.question(workshop));
            return frame.answer(answer, out -> print(out, answer));
        });
    }

    private static void print(PrintWriter out, Answer answer) {
        out.println(answer.says());
        answer.candidates().stream().limit(SHOWN).forEach(c -> print(out, c));
        out.printf("%5.1f %%  a horn that is not listed%n", 100 * answer.unlisted());
        answer.remarks().forEach(remark -> out.println("! " + remark));
        if (!answer.odd().isEmpty()) {
            out.println("! does not fit the rest: " + String.join(", ", answer.odd()));
        }
        out.println("look next:");
        answer.next().stream().limit(SHOWN).forEach(look -> print(out, look));
        answer.marking().stream()
                .limit(2)
                .forEach(look ->
                        out.println("  only after the owner's yes: " + look.trait() + " (" + look.marks() + ")"));
    }

    private static void print(PrintWriter out, Candidate c) {
        String years = c.years() == null
                ? ""
                : "  " + c.years().from() + "-" + c.years().to();
        out.printf("%5.1f %%  %s%s  (%s)%n", 100 * c.probability(), c.title(), years, c.id());
        String why = c.why().stream().limit(3).map(IdentifyCommand::reason).collect(Collectors.joining("; "));
        if (!why.isEmpty()) {
            out.println("         " + why);
        }
    }

    private static String reason(Reason reason) {
        return String.format("%s %+.1f", reason.answer(), reason.logOdds());
    }

    private static void print(PrintWriter out, NextLook look) {
        String guards = look.guards().isEmpty() ? "" : "  guards " + String.join(", ", look.guards());
        out.printf(
                "  %.2f bit  %-22s %s (%s)%s%n",
                look.gainBits(), look.trait(), look.question(), look.cost().word(), guards);
    }
}
