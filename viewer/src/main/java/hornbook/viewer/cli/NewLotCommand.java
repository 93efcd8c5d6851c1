package hornbook.viewer.cli;

import hornbook.shared.shop.LotState;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Something new in a drawer. */
@Command(
        name = "new",
        header = "Puts something new into a drawer or place, as a lot of its own.",
        footer = "hornbook stock new \"guard screw\" 6 --in \"misc.\" --thread 3-48 --size \"length 6 mm\"")
final class NewLotCommand extends StockDeed {
    @Parameters(index = "0", paramLabel = "WHAT", description = "What it is. A tin of mixed screws is a “grab bag, …”.")
    String title = "";

    @Parameters(index = "1", paramLabel = "COUNT", description = "A whole number, or few, some or plenty.")
    String count = "";

    @Option(names = "--in", paramLabel = "PLACE", required = true, description = "A drawer or place.")
    String place = "";

    @Mixin
    PieceOptions piece = new PieceOptions();

    NewLotCommand(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        Deed done =
                workshop.stockBook().add(piece.piece(title, LotState.NEW, workshop), place, StockCommand.count(count));
        piece.remark(title, workshop).ifPresent(frame::say);
        return done;
    }
}
