package hornbook.catalogue.entry;

import java.util.List;

/** What a model says of one trait. */
public sealed interface Distribution permits Shares, Normal {
    /** An object of exactly mean and sd is a measurement, any other one shares by value. */
    static Distribution from(Fields in) {
        boolean measured = in.names().size() == 2 && in.names().containsAll(List.of("mean", "sd"));
        return measured ? new Normal(in.number("mean"), in.number("sd")) : new Shares(in.numbers());
    }
}
