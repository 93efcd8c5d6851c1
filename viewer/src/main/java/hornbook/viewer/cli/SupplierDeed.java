package hornbook.viewer.cli;

import hornbook.shared.shop.Supplier;
import hornbook.shared.store.Deed;
import hornbook.shared.supply.SupplierCard;
import hornbook.shared.supply.SupplierSaid;
import hornbook.viewer.workshop.Workshop;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is written down of a supplier: it is shown as it is after. */
abstract class SupplierDeed extends OneDeed {
    SupplierDeed(Frame frame) {
        super(frame);
    }

    /** What a deed on a supplier left behind; no supplier where it is out of use. */
    record After(Deed deed, Optional<SupplierCard> supplier) {}

    @Override
    final Left left(Workshop workshop, Deed done) {
        Optional<SupplierCard> supplier = workshop.books().touched(done, Supplier.class).stream()
                .findFirst()
                .flatMap(id -> workshop.suppliers().card(id));
        return new Left(new After(done, supplier), out -> supplier.ifPresent(card -> SupplierCommand.print(out, card)));
    }

    /** What can be said of a supplier. */
    static final class Said {
        @Option(names = "--place", paramLabel = "TOWN", description = "Where it is.")
        @Nullable
        String place;

        @Option(
                names = "--days",
                paramLabel = "N",
                description = "Days from order to arrival: a guess as 10, or those of past deliveries as \"8 9 12\"."
                        + " The shop's own deliveries count once there are three.")
        @Nullable
        String days;

        @Option(names = "--packs", paramLabel = "WORDS", description = "In what packs it sells.")
        @Nullable
        String packs;

        @Option(
                names = "--smallest-order",
                paramLabel = "MONEY",
                description = "Under which it sends nothing; 0: none.")
        @Nullable
        BigDecimal smallest;

        SupplierSaid named(@Nullable String name) {
            return new SupplierSaid(name, place, days, packs, smallest);
        }
    }

    /** New here. */
    @Command(
            name = "new",
            header = "Writes down a supplier that is new here; goods can then be ordered there and received from it.",
            footer = "hornbook supplier new \"Harrowgate Felts\" --days 10 --packs \"felt by the sheet\"")
    static final class New extends SupplierDeed {
        @Parameters(paramLabel = "NAME", description = "What it is called.")
        String name = "";

        @Mixin
        Said said = new Said();

        New(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.supplierBook().add(said.named(name));
        }
    }

    /** Otherwise than written down. */
    @Command(
            name = "change",
            header =
                    "Puts right what is written down of a supplier; “restock verdict” says whether to buy there again.",
            footer = "hornbook supplier change tidegate --smallest-order 25")
    static final class Change extends SupplierDeed {
        @Parameters(paramLabel = "SUPPLIER", description = "Its number, or its name.")
        String called = "";

        @Option(names = "--name", paramLabel = "NAME", description = "What it is called from now on.")
        @Nullable
        String name;

        @Mixin
        Said said = new Said();

        Change(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.supplierBook().change(called, said.named(name));
        }
    }

    /** Not any more. */
    @Command(
            name = "retire",
            header = "Notes that nothing is bought there any more; what was bought keeps its name.",
            footer = "hornbook supplier retire farspan")
    static final class Retire extends SupplierDeed {
        @Parameters(paramLabel = "SUPPLIER", description = "Its number, or its name.")
        String called = "";

        Retire(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.supplierBook().retire(called);
        }
    }

    /** Again. */
    @Command(
            name = "bring-back",
            header = "Brings back a supplier that was out of use.",
            footer = "hornbook supplier bring-back sup-v-gablestreet")
    static final class BringBack extends SupplierDeed {
        @Parameters(paramLabel = "NUMBER", description = "Its number.")
        String id = "";

        BringBack(Frame frame) {
            super(frame);
        }

        @Override
        Deed done(Workshop workshop) {
            return workshop.supplierBook().bringBack(id);
        }
    }
}
