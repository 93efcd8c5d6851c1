package hornbook.viewer.cli;

import picocli.CommandLine;

/** The command line as a whole: every command in its place, and what becomes of errors. */
public final class Cli {
    private final CommandLine line;
    private final Faults faults;

    public Cli(Surroundings around, WindowStart window) {
        Frame frame = new Frame(around);
        faults = new Faults(around, Folders.of(around).log());
        OpenCommand open = new OpenCommand(frame, window);
        line = new CommandLine(new Root(open))
                .addMixin("common", frame.options())
                .addSubcommand(new WhereCommand(frame))
                .addSubcommand(open)
                .addSubcommand(new DemoCommand(frame, window))
                .addSubcommand(new FindCommand(frame))
                .addSubcommand(new IndexCommand(frame))
                .addSubcommand(new DrawerCommand(frame))
                .addSubcommand(new LotCommand(frame))
                .addSubcommand(new LabelCommand(frame))
                .addSubcommand(new PicturesCommand(frame))
                .addSubcommand(StockCommand.line(frame))
                .addSubcommand(JobCommand.line(frame))
                .addSubcommand(HornCommand.line(frame))
                .addSubcommand(new EstimateCommand(frame))
                .addSubcommand(new IdentifyCommand(frame))
                .addSubcommand(new CompareCommand(frame))
                .addSubcommand(new BriefCommand(frame))
                .addSubcommand(new MayCommand(frame))
                .addSubcommand(new PadsCommand(frame))
                .addSubcommand(new RestockCommand(frame))
                .addSubcommand(new ThreadCommand(frame))
                .addSubcommand(new GaugeCommand(frame))
                .addSubcommand(new UndoCommand(frame))
                .addSubcommand(new ImportCommand(frame))
                .addSubcommand(new ExportCommand(frame))
                .addSubcommand(new BackupCommand(frame))
                .addSubcommand(new RestoreCommand(frame))
                .addSubcommand(new CheckCommand(frame))
                .addSubcommand(new TrainCommand(frame, window));
        HelpPage.openWithExamples(line);
        line.setOut(around.out());
        line.setErr(around.err());
        line.setParameterExceptionHandler(faults::usage);
        line.setExecutionExceptionHandler((thrown, command, parsed) -> faults.thrown(thrown));
    }

    /** Runs one line and gives the exit code, see {@link ExitCode}. Throws nothing. */
    public int run(String... words) {
        try {
            return line.execute(words);
        } catch (RuntimeException | Error unforeseen) {
            return faults.thrown(unforeseen);
        } finally {
            line.getOut().flush();
        }
    }

    /** All commands with their help pages, for what collects their examples. */
    CommandLine line() {
        return line;
    }
}
