package hornbook.viewer.cli;

import hornbook.catalogue.may.Allowed;
import hornbook.catalogue.may.MayAnswer;
import hornbook.catalogue.may.MayQuestion;
import hornbook.shared.shop.BadInput;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** May I use this on that? */
@Command(
        name = "may",
        header = "May I use this on that? What nobody wrote of is never taken as allowed.",
        footer = "hornbook may sup-acetone body-material=moulded-plastic")
final class MayCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "THING", description = "A supply, tool or operation: its name or id.")
    String thing = "";

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "TRAIT=VALUE", description = "On what.")
    List<String> on = List.of();

    private final Frame frame;

    MayCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        MayQuestion question = new MayQuestion(thing, values());
        return frame.reading(workshop -> {
            MayAnswer answer = workshop.may().answer(question);
            return answer.verdict() == Allowed.NOT_KNOWN
                    ? frame.nothing(answer, out -> print(out, answer))
                    : frame.answer(answer, out -> print(out, answer));
        });
    }

    private Map<String, String> values() {
        Map<String, String> values = new LinkedHashMap<>();
        for (String pair : on) {
            int equals = pair.indexOf('=');
            if (equals < 1) {
                throw new BadInput("“" + pair + "” is not written as trait=value, as body-finish=nickel");
            }
            values.put(pair.substring(0, equals), pair.substring(equals + 1));
        }
        return values;
    }

    private static void print(PrintWriter out, MayAnswer answer) {
        out.println(
                answer.verdict().word() + ": " + answer.title() + (answer.why().isBlank() ? "" : ", " + answer.why()));
        if (answer.instead() != null) {
            out.println("instead: " + answer.instead());
        }
        if (answer.caution() != null) {
            out.println("caution: " + answer.caution());
        }
        if (!answer.lookFirst().isEmpty()) {
            out.println("look first at " + String.join(", ", answer.lookFirst()));
        }
        if (answer.source() != null) {
            out.println("source: " + answer.source());
        }
    }
}
