package hornbook.viewer.cli;

import hornbook.shared.stock.LotCard;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Parameters;

/** One thing done to stock: the lots it touched are shown as they are now. */
abstract class StockDeed extends OneDeed {
    StockDeed(Frame frame) {
        super(frame);
    }

    /** What a deed on stock left behind. */
    record After(Deed deed, List<LotCard> lots) {}

    @Override
    final Left left(Workshop workshop, Deed done) {
        List<LotCard> lots = workshop.stockBook().after(done);
        return new Left(new After(done, lots), out -> lots.forEach(lot -> line(out, lot)));
    }

    private static void line(PrintWriter out, LotCard lot) {
        out.println(lot.id() + "  " + lot.count() + "  " + lot.title() + "  in " + lot.drawer()
                + (lot.drawerLabel().isBlank() ? "" : " “" + lot.drawerLabel() + "”")
                + (lot.heed() == null ? "" : "  ! " + lot.heed()));
    }

    /** One thing done to a lot that is there. */
    abstract static class OnLot extends StockDeed {
        @Parameters(index = "0", paramLabel = "LOT", description = "Its number.")
        String lot = "";

        OnLot(Frame frame) {
            super(frame);
        }
    }
}
