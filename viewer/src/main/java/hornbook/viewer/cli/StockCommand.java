package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Count;
import hornbook.shared.stock.LotCard;
import hornbook.shared.stock.StockBook;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Stock: one subcommand a thing that hands do to it. Each is a deed that “undo” takes back. */
@Command(
        name = "stock",
        header = "Counts, takes, moves and sets aside what lies in drawers.",
        footer = "hornbook stock count lot-0260 3")
final class StockCommand {
    private StockCommand() {}

    static CommandLine line(Frame frame) {
        return new CommandLine(new StockCommand())
                .addSubcommand(new NewLotCommand(frame))
                .addSubcommand(new CountIt(frame))
                .addSubcommand(new UseCommand(frame))
                .addSubcommand(new ReceiveCommand(frame))
                .addSubcommand(new SalvageCommand(frame))
                .addSubcommand(new MoveIt(frame))
                .addSubcommand(new StripCommand(frame))
                .addSubcommand(new SortOutCommand(frame))
                .addSubcommand(new Split(frame))
                .addSubcommand(new Join(frame))
                .addSubcommand(new SetAside(frame))
                .addSubcommand(new Keepsake(frame))
                .addSubcommand(new Retire(frame))
                .addSubcommand(new BringBack(frame))
                .addSubcommand(new LendCommand(frame));
    }

    /** What a deed on stock left behind. */
    record After(Deed deed, List<LotCard> lots) {}

    /** One thing done to a lot: the lots it touched are shown as they are now. */
    abstract static class OnLot implements Callable<Integer> {
        @Parameters(index = "0", paramLabel = "LOT", description = "Its number.")
        String lot = "";

        private final Frame frame;

        OnLot(Frame frame) {
            this.frame = frame;
        }

        abstract Deed done(StockBook stock);

        @Override
        public final Integer call() {
            return frame.writing(workshop -> answer(frame, workshop, this::done));
        }
    }

    static int answer(Frame frame, Workshop workshop, Function<StockBook, Deed> deed) {
        return answer(frame, workshop, deed.apply(workshop.stockBook()));
    }

    static int answer(Frame frame, Workshop workshop, Deed done) {
        After after = new After(done, workshop.stockBook().after(done));
        return frame.answer(after, out -> {
            after.lots()
                    .forEach(lot -> out.println(
                            lot.id() + "  " + lot.count() + "  " + lot.title() + "  in " + lot.drawer() + " “"
                                    + lot.drawerLabel() + "”" + (lot.heed() == null ? "" : "  ! " + lot.heed())));
            out.println("deed " + done.number() + ": " + done.title() + " (“hornbook undo” takes it back)");
        });
    }

    static Count count(String written) {
        return Count.read(written)
                .orElseThrow(() ->
                        new BadInput("“" + written + "” is no count: write a whole number, or few, some or plenty"));
    }

    /** Counted by hand. */
    @Command(
            name = "count",
            header = "Sets how many there are, as counted by hand.",
            footer = "hornbook stock count lot-0260 3")
    static final class CountIt extends OnLot {
        @Parameters(index = "1", paramLabel = "COUNT", description = "A whole number, or few, some or plenty.")
        String count = "";

        CountIt(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(StockBook stock) {
            return stock.count(lot, StockCommand.count(count));
        }
    }

    /** To another place. */
    @Command(
            name = "move",
            header = "Moves a whole lot to another drawer or place.",
            footer = "hornbook stock move lot-0260 d-apoth-r1c5")
    static final class MoveIt extends OnLot {
        @Parameters(index = "1", paramLabel = "PLACE", description = "A drawer or place, by number or label.")
        String to = "";

        MoveIt(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(StockBook stock) {
            return stock.move(lot, to);
        }
    }

    /** A part of it becomes a lot of its own. */
    @Command(
            name = "split",
            header = "Makes some of the pieces a lot of their own.",
            footer = "hornbook stock split lot-0260 1 \"misc.\"")
    static final class Split extends OnLot {
        @Parameters(index = "1", paramLabel = "N", description = "How many pieces.")
        int pieces;

        @Parameters(index = "2", paramLabel = "PLACE", description = "Where they go: a drawer or place.")
        String to = "";

        Split(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(StockBook stock) {
            return stock.split(lot, pieces, to);
        }
    }

    /** Poured together. */
    @Command(
            name = "join",
            header = "Puts one lot to another of the same kind.",
            footer = "hornbook stock join lot-0001 lot-0002")
    static final class Join extends OnLot {
        @Parameters(index = "1", paramLabel = "LOT", description = "The lot that keeps them.")
        String into = "";

        Join(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(StockBook stock) {
            return stock.join(lot, into);
        }
    }

    /** Reserve. */
    @Command(
            name = "set-aside",
            header = "Sets a lot aside as reserve, or lets it go again.",
            footer = "hornbook stock set-aside lot-0260")
    static final class SetAside extends OnLot {
        @Option(names = "--release", description = "Let it go again.")
        boolean release;

        SetAside(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(StockBook stock) {
            return stock.setAside(lot, !release);
        }
    }

    /** Pattern. */
    @Command(
            name = "keepsake",
            header = "Keeps a lot as a pattern that is never used, or no longer.",
            footer = "hornbook stock keepsake lot-0260")
    static final class Keepsake extends OnLot {
        @Option(names = "--release", description = "It may be used again.")
        boolean release;

        Keepsake(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(StockBook stock) {
            return stock.keepsake(lot, !release);
        }
    }

    /** Out of use. */
    @Command(
            name = "retire",
            header = "Takes a lot out of use; it can be brought back.",
            footer = "hornbook stock retire lot-0260")
    static final class Retire extends OnLot {
        Retire(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(StockBook stock) {
            return stock.retire(lot);
        }
    }

    /** In use again. */
    @Command(
            name = "bring-back",
            header = "Brings a lot that was taken out of use back to where it lay.",
            footer = "hornbook stock bring-back lot-0501")
    static final class BringBack extends OnLot {
        BringBack(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(StockBook stock) {
            return stock.bringBack(lot);
        }
    }
}
