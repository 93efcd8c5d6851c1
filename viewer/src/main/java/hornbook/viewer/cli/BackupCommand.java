package hornbook.viewer.cli;

import hornbook.shared.shop.Counted;
import hornbook.shared.store.Backup;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** A dated, checked copy. */
@Command(
        name = "backup",
        header = "Makes a dated copy of the whole shop in its folder backups, checked before it counts.",
        footer = "hornbook backup")
final class BackupCommand implements Callable<Integer> {
    private final Frame frame;

    BackupCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.reading(workshop -> {
            Backup.Answer made = new Backup(frame.shop()).make(workshop.books().today());
            return frame.answer(
                    made, out -> out.println(made.file() + "  " + Counted.of(made.files(), "file") + ", checked"));
        });
    }
}
