package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Trait;
import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.Reading;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.BadInput;

/** Reads a measurement with its unit and, after ±, its doubt; a bare number is millimetres. */
record MeasureReader(SizeReader sizes) {
    Seen read(Trait trait, String text) {
        return switch (sizes.measured(text, LengthUnit.MILLIMETRE)) {
            case Reading.Refused<Measured> refused -> throw new BadInput(trait.id() + ": " + refused.reason());
            case Reading.Read<Measured>(Measured measured) -> seen(trait, measured);
        };
    }

    private static Seen seen(Trait trait, Measured measured) {
        double mm = measured.nominal().mm();
        if (mm <= 0) {
            throw new BadInput(trait.id() + ": a length above nought was expected");
        }
        return new Seen.Measured(trait.id(), mm, measured.sigma().orElse(0.0));
    }
}
