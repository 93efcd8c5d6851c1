package hornbook.viewer.cli;

import hornbook.shared.shop.LotState;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Something new in a drawer. */
@Command(
        name = "new",
        header = "Puts something new into a drawer or place, as a lot of its own.",
        footer = "hornbook stock new \"guard screw\" 6 --in \"misc.\" --thread 3-48 --size \"length 6 mm\"")
final class NewLotCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "WHAT", description = "What it is. A tin of mixed screws is a “grab bag, …”.")
    String title = "";

    @Parameters(index = "1", paramLabel = "COUNT", description = "A whole number, or few, some or plenty.")
    String count = "";

    @Option(names = "--in", paramLabel = "PLACE", required = true, description = "A drawer or place.")
    String place = "";

    @Mixin
    PieceOptions piece = new PieceOptions();

    private final Frame frame;

    NewLotCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        return frame.writing(workshop -> {
            int code = StockCommand.answer(
                    frame,
                    workshop,
                    stock -> stock.add(piece.piece(title, LotState.NEW, workshop), place, StockCommand.count(count)));
            piece.remark(title, workshop).ifPresent(frame::say);
            return code;
        });
    }
}
