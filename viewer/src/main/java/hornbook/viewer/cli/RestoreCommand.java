package hornbook.viewer.cli;

import hornbook.shared.shop.Counted;
import hornbook.shared.store.Restore;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** A backup takes the shop's place. */
@Command(
        name = "restore",
        header = "Puts a backup in the shop's place; the shop as it was is kept aside whole.",
        footer = "hornbook restore shop-backup.zip")
final class RestoreCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "A file that backup made.")
    Path file = Path.of("");

    private final Frame frame;

    RestoreCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        Restore.Answer done = new Restore(frame.shop())
                .from(frame.around().here().resolve(file).normalize());
        return frame.answer(
                done,
                out -> out.println(Counted.of(done.files(), "file") + " of " + done.day()
                        + " restored; the shop as it was is kept in " + done.keptAside()));
    }
}
