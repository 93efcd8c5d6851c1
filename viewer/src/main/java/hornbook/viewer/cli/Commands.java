package hornbook.viewer.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;

/** Every command by its name. Each is built only when it is wanted: all of them together take a fifth of a find. */
final class Commands {
    private final Map<String, Supplier<CommandLine>> byName = new LinkedHashMap<>();

    Commands(Frame frame, WindowStart window) {
        add("where", () -> new WhereCommand(frame));
        add("open", () -> new OpenCommand(frame, window));
        add("demo", () -> new DemoCommand(frame, window));
        add("find", () -> new FindCommand(frame));
        add("identify", () -> new IdentifyCommand(frame));
        add("compare", () -> new CompareCommand(frame));
        add("brief", () -> new BriefCommand(frame));
        add("diagnose", () -> new DiagnoseCommand(frame));
        add("may", () -> new MayCommand(frame));
        add("thread", () -> new ThreadCommand(frame));
        add("fit", () -> new FitCommand(frame));
        add("spring", () -> new SpringCommand(frame));
        add("gauge", () -> new GaugeCommand(frame));
        add("pads", () -> new PadsCommand(frame));
        add("drawer", () -> new DrawerCommand(frame));
        add("look-through", () -> new LookThroughCommand(frame));
        add("cabinet", () -> new CabinetCommand(frame));
        add("place", () -> new PlaceCommand(frame));
        byName.put("tool", () -> ToolCommand.line(frame));
        add("lot", () -> new LotCommand(frame));
        byName.put("stock", () -> StockCommand.line(frame));
        add("label", () -> new LabelCommand(frame));
        add("undo", () -> new UndoCommand(frame));
        byName.put("job", () -> JobCommand.line(frame));
        byName.put("horn", () -> HornCommand.line(frame));
        byName.put("entry", () -> EntryCommand.line(frame));
        byName.put("supplier", () -> SupplierCommand.line(frame));
        byName.put("restock", () -> RestockCommand.line(frame));
        add("estimate", () -> new EstimateCommand(frame));
        add("setting", () -> new SettingCommand(frame));
        add("year", () -> new YearCommand(frame));
        add("pictures", () -> new PicturesCommand(frame));
        add("index", () -> new IndexCommand(frame));
        add("import", () -> new ImportCommand(frame));
        add("export", () -> new ExportCommand(frame));
        byName.put("pack", () -> PackCommand.line(frame));
        add("backup", () -> new BackupCommand(frame));
        add("restore", () -> new RestoreCommand(frame));
        add("check", () -> new CheckCommand(frame));
        add("train", () -> new TrainCommand(frame, window));
    }

    private void add(String name, Supplier<Object> command) {
        byName.put(name, () -> new CommandLine(command.get()));
    }

    /** Adds the command that a line names, or all of them where it names none that there is. */
    void into(CommandLine line, List<String> words) {
        String name = words.stream().filter(byName::containsKey).findFirst().orElse("");
        Supplier<CommandLine> named = byName.get(name);
        if (named != null && plainBefore(words, name)) {
            line.addSubcommand(name, named.get());
        } else {
            byName.forEach((each, command) -> line.addSubcommand(each, command.get()));
        }
    }

    /** Nothing stands before the command but options with their values, so that no other command can be meant. */
    private static boolean plainBefore(List<String> words, String name) {
        int at = words.indexOf(name);
        for (int i = 0; i < at; i++) {
            boolean option = words.get(i).startsWith("-");
            boolean value = i > 0 && List.of("--shop", "--as-of").contains(words.get(i - 1));
            if (!option && !value) {
                return false;
            }
        }
        return at == 0 || !List.of("--shop", "--as-of").contains(words.get(at - 1));
    }
}
