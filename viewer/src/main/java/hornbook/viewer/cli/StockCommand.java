package hornbook.viewer.cli;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Count;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
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
        return Verbs.of(
                new StockCommand(),
                new NewLotCommand(frame),
                new ChangeLotCommand(frame),
                new CountIt(frame),
                new UseCommand(frame),
                new ReceiveCommand(frame),
                new SalvageCommand(frame),
                new MoveIt(frame),
                new StripCommand(frame),
                new SortOutCommand(frame),
                new Split(frame),
                new Join(frame),
                new SetAside(frame),
                new Keepsake(frame),
                new Retire(frame),
                new BringBack(frame),
                new LendCommand(frame));
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
    static final class CountIt extends StockDeed.OnLot {
        @Parameters(index = "1", paramLabel = "COUNT", description = "A whole number, or few, some or plenty.")
        String count = "";

        CountIt(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.stockBook().count(lot, StockCommand.count(count));
        }
    }

    /** To another place. */
    @Command(
            name = "move",
            header = "Moves a whole lot to another drawer or place.",
            footer = "hornbook stock move lot-0260 d-apoth-r1c5")
    static final class MoveIt extends StockDeed.OnLot {
        @Parameters(index = "1", paramLabel = "PLACE", description = "A drawer or place, by number or label.")
        String to = "";

        MoveIt(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.stockBook().move(lot, to);
        }
    }

    /** A part of it becomes a lot of its own. */
    @Command(
            name = "split",
            header = "Makes some of the pieces a lot of their own.",
            footer = "hornbook stock split lot-0260 1 \"misc.\"")
    static final class Split extends StockDeed.OnLot {
        @Parameters(index = "1", paramLabel = "N", description = "How many pieces.")
        int pieces;

        @Parameters(index = "2", paramLabel = "PLACE", description = "Where they go: a drawer or place.")
        String to = "";

        Split(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.stockBook().split(lot, pieces, to);
        }
    }

    /** Poured together. */
    @Command(
            name = "join",
            header = "Puts one lot to another of the same kind.",
            footer = "hornbook stock join lot-0001 lot-0002")
    static final class Join extends StockDeed.OnLot {
        @Parameters(index = "1", paramLabel = "LOT", description = "The lot that keeps them.")
        String into = "";

        Join(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.stockBook().join(lot, into);
        }
    }

    /** Reserve. */
    @Command(
            name = "set-aside",
            header = "Sets a lot aside as reserve, or lets it go again.",
            footer = "hornbook stock set-aside lot-0260")
    static final class SetAside extends StockDeed.OnLot {
        @Option(names = "--release", description = "Let it go again.")
        boolean release;

        SetAside(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.stockBook().setAside(lot, !release);
        }
    }

    /** Pattern. */
    @Command(
            name = "keepsake",
            header = "Keeps a lot as a pattern that is never used, or no longer.",
            footer = "hornbook stock keepsake lot-0260")
    static final class Keepsake extends StockDeed.OnLot {
        @Option(names = "--release", description = "It may be used again.")
        boolean release;

        Keepsake(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.stockBook().keepsake(lot, !release);
        }
    }

    /** Out of use. */
    @Command(
            name = "retire",
            header = "Takes a lot out of use; it can be brought back.",
            footer = "hornbook stock retire lot-0260")
    static final class Retire extends StockDeed.OnLot {
        Retire(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.stockBook().retire(lot);
        }
    }

    /** In use again. */
    @Command(
            name = "bring-back",
            header = "Brings a lot that was taken out of use back to where it lay.",
            footer = "hornbook stock bring-back lot-0501")
    static final class BringBack extends StockDeed.OnLot {
        BringBack(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.stockBook().bringBack(lot);
        }
    }
}
