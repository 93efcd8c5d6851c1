package hornbook.shared.measure;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads {@code name=value;name=value}. */
record DimensionsReader(LengthReader lengths) {

    Reading<Map<String, DimensionValue>> all(String text) {
        Map<String, DimensionValue> dimensions = new LinkedHashMap<>();
        for (String piece : text.split(";", -1)) {
            if (piece.isBlank()) {
                continue;
            }
            int equals = piece.indexOf('=');
            if (equals < 1 || piece.substring(0, equals).isBlank()) {
                return Reading.refused(piece, "is no dimension: write name=value, with ; between");
            }
            String name = piece.substring(0, equals).strip();
            Reading<DimensionValue> value = value(piece.substring(equals + 1));
            if (value instanceof Reading.Refused<DimensionValue> refused) {
                return new Reading.Refused<>(text, name + ": " + refused.reason());
            }
            if (dimensions.put(name, value.orThrow()) != null) {
                return Reading.refused(text, "gives " + name + " twice");
            }
        }
        return Reading.read(Collections.unmodifiableMap(dimensions));
    }

    Reading<DimensionValue> value(String text) {
        String plain = Writing.plain(text);
        Optional<BigDecimal> number = PlainSizes.number(plain);
        if (number.isPresent()) {
            return Reading.read(new DimensionValue.Number(number.get()));
        }
        Reading<Measured> size = lengths.measured(plain, LengthUnit.MILLIMETRE);
        return switch (size) {
            case Reading.Read<Measured>(Measured measured) -> Reading.read(new DimensionValue.Size(measured));
            case Reading.Refused<Measured> _
            when !plain.isEmpty() && Character.isLetter(plain.charAt(0)) ->
                Reading.read(new DimensionValue.Word(plain));
            case Reading.Refused<Measured>(String written, String reason) -> new Reading.Refused<>(written, reason);
        };
    }
}
