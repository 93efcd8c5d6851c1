package hornbook.shared.pads;

import hornbook.shared.measure.Length;
import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.Reading;
import hornbook.shared.measure.SizeReader;
import java.math.BigDecimal;
import java.util.Optional;

/** Sizes of cups and pads as written, a bare number in mm. */
record Millimetres(SizeReader sizes) {

    Reading<BigDecimal> read(String text) {
        return sizes.length(text, LengthUnit.MILLIMETRE).map(Length::millimetres);
    }

    /** A dimension of a lot: {@code size} of {@code size=31 mm;thickness=4.0 mm}; a range is no one size. */
    Optional<BigDecimal> dimension(String dimensions, String name) {
        for (String part : dimensions.split(";")) {
            int equals = part.indexOf('=');
            if (equals > 0 && part.substring(0, equals).strip().equals(name)) {
                return read(part.substring(equals + 1)).found();
            }
        }
        return Optional.empty();
    }
}
