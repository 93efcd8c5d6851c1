package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.stock.MemberLine;
import hornbook.shared.stock.ToolCard;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tools: where each is, and what becomes of it. */
@Command(
        name = "tool",
        header = "Shows a tool of the shop, or lists those that want something.",
        footer = "hornbook tool tool-caliper")
final class ToolCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "TOOL",
            arity = "0..1",
            description = "Its number; if left out, those broken, lent out of a set, or not to be found are listed.")
    String id = "";

    @Option(names = "--all", description = "List every tool.")
    boolean every;

    private final Frame frame;

    private ToolCommand(Frame frame) {
        this.frame = frame;
    }

    static CommandLine line(Frame frame) {
        return Verbs.of(
                new ToolCommand(frame),
                new ToolDeeds.New(frame),
                new ToolDeeds.Put(frame),
                new ToolDeeds.Checked(frame),
                new ToolDeeds.Member(frame));
    }

    @Override
    public Integer call() {
        return id.isEmpty()
                ? frame.reading(this::all)
                : frame.showing("tool", id, shop -> shop.tools().tool(id), ToolCommand::print);
    }

    /** The tools asked for. */
    record AllTools(List<ToolCard> tools) {}

    private int all(Workshop workshop) {
        AllTools all = new AllTools(workshop.tools().all().stream()
                .filter(tool ->
                        every || !tool.wanting().isEmpty() || !tool.state().equals("good") || tool.lies() == null)
                .toList());
        return all.tools().isEmpty()
                ? frame.nothing(all, out -> out.println("no tool wants anything"))
                : frame.answer(all, out -> all.tools().forEach(tool -> brief(out, tool)));
    }

    static ToolCard shown(Workshop workshop, String id) {
        return workshop.tools().tool(id).orElseThrow(() -> new BadInput("there is no tool " + id));
    }

    private static void brief(PrintWriter out, ToolCard tool) {
        out.println(tool.id() + "  " + tool.title() + (tool.state().equals("good") ? "" : "  (" + tool.state() + ")")
                + (tool.lies() == null ? "  nobody knows where" : "  in " + tool.lies() + " “" + tool.label() + "”"));
        tool.wanting().forEach(member -> out.println("    " + words(member)));
    }

    static void print(PrintWriter out, ToolCard tool) {
        brief(out, tool);
        if (!tool.errorMm().isBlank()) {
            out.println("  reads " + tool.errorMm() + " mm off"
                    + (tool.errorChecked() == null ? "" : ", checked " + tool.errorChecked()));
        }
        if (!tool.serves().isBlank()) {
            out.println("  serves: " + tool.serves());
        }
        if (!tool.note().isBlank()) {
            out.println("  note: " + tool.note());
        }
        tool.members().stream().filter(MemberLine::good).forEach(member -> out.println("    " + words(member)));
    }

    private static String words(MemberLine member) {
        return member.id() + "  " + member.state() + (member.lentTo() == null ? "" : " to " + member.lentTo())
                + (member.since() == null ? "" : " since " + member.since())
                + (member.note().isBlank() ? "" : "; " + member.note());
    }
}
