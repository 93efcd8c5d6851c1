package hornbook.viewer.cli;

import hornbook.shared.setting.SettingBook;
import hornbook.shared.setting.SettingLine;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Deed;
import java.io.PrintWriter;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** How is this shop set? */
@Command(
        name = "setting",
        header = "Lists how the shop is set: prices, stock keeping, its name; or sets one of it.",
        footer = "hornbook setting hourly_rate 42.50")
final class SettingCommand implements Callable<Integer> {
    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "Which; all where left out.")
    @Nullable
    String name;

    @Parameters(index = "1", arity = "0..*", paramLabel = "VALUE", description = "What to set it to.")
    List<String> value = List.of();

    @Option(names = "--unset", description = "What is usual holds again.")
    boolean unset;

    private final Frame frame;

    SettingCommand(Frame frame) {
        this.frame = frame;
    }

    /** All of them. */
    record All(List<SettingLine> settings) {}

    /** One of them as it now stands, and the deed that set it. */
    record After(SettingLine setting, @Nullable Deed deed) {}

    @Override
    public Integer call() {
        if (unset && (name == null || !value.isEmpty())) {
            throw new BadInput("--unset takes one name and no value: as “hornbook setting hourly_rate --unset”");
        }
        if (unset || !value.isEmpty()) {
            return frame.writing(workshop -> set(workshop.settings(), Objects.requireNonNull(name)));
        }
        String asked = name;
        return frame.reading(workshop -> asked == null
                ? all(workshop.settings().all())
                : one(new After(workshop.settings().one(asked), null)));
    }

    private int set(SettingBook settings, String which) {
        Deed deed = unset ? settings.unset(which) : settings.set(which, String.join(" ", value));
        return one(new After(settings.one(which), deed));
    }

    private int one(After after) {
        return frame.answer(after, out -> {
            print(out, after.setting());
            if (after.deed() != null) {
                out.println("deed " + after.deed().number() + " (“hornbook undo” takes it back)");
            }
        });
    }

    private int all(List<SettingLine> lines) {
        return frame.answer(new All(lines), out -> lines.forEach(line -> print(out, line)));
    }

    private static void print(PrintWriter out, SettingLine line) {
        String stands = line.value() == null ? "not set, usual: " + line.usual() : line.value();
        out.printf("%-20s %s%n", line.name(), stands);
        out.println("    " + line.meaning() + " Write " + line.form() + ".");
        if (line.trouble() != null) {
            out.println("! " + line.trouble());
        }
    }
}
