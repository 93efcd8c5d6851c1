package hornbook.viewer.cli;

import hornbook.catalogue.entry.Cup;
import hornbook.shared.job.KeyField;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** A measure of a key goes into the horn's map. */
@Command(
        name = "key",
        header = "Writes a measure of a key into the horn's map: rod, thread, spring, rim, resonator.",
        footer = "hornbook job key j-0239 cup-f rod-diameter 2.38")
final class JobKey extends OnJob {
    @Parameters(index = "1", paramLabel = "KEY", description = "Its cup, as cup-f, or what it is called.")
    String key = "";

    @Parameters(index = "2", paramLabel = "WHAT", description = "rod-diameter, rod-length, thread, spring-size …")
    String what = "";

    @Parameters(index = "3", paramLabel = "VALUE", description = "As read; lengths in mm.")
    String value = "";

    JobKey(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        KeyField field = new OneOf<>(List.of(KeyField.values()), KeyField::word).read(what, "is not measured on a key");
        workshop.refuseNoCup(key);
        if (field == KeyField.THREAD) {
            workshop.sizes().reader().threads(value).refusal().ifPresent(why -> {
                throw new BadInput("thread: " + why);
            });
        }
        Cup cup = workshop.catalogue().cups().get(key);
        return workshop.mapBook()
                .measure(job, cup == null ? key : cup.title(), cup == null ? "" : cup.id(), field, value);
    }
}
