package hornbook.viewer.gauges;

import hornbook.catalogue.spring.SpringQuestion;
import hornbook.shared.measure.Length;
import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.BadInput;
import java.util.Optional;

/**
 * The fields of the springs pane as they stand: a needle spring as measured, and what is thought of in its place.
 *
 * @param wire its diameter
 * @param length free, post face to cradle
 * @param key words of the keys it serves
 */
record SpringAsked(
        String wire, String length, String toWire, String toLength, String hole, String key, String instrument) {
    static final SpringAsked NOTHING = new SpringAsked("", "", "", "", "", "", "alto");

    boolean blank() {
        return wire.isBlank() || length.isBlank();
    }

    /** @throws BadInput naming the field that is no size */
    SpringQuestion question(SizeReader sizes) {
        return new SpringQuestion(
                size(sizes, "wire", wire),
                Optional.empty(),
                Optional.empty(),
                size(sizes, "length", length).orElseThrow(),
                size(sizes, "another wire", toWire),
                size(sizes, "another length", toLength),
                size(sizes, "hole", hole),
                Typed.in(key),
                instrument);
    }

    private static Optional<Length> size(SizeReader sizes, String field, String text) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        var read = sizes.length(text, LengthUnit.MILLIMETRE);
        if (read.found().isEmpty()) {
            throw new BadInput(field + ": " + read.refusal().orElse("is no size"));
        }
        return read.found();
    }

    SpringAsked withWire(String text) {
        return new SpringAsked(text, length, toWire, toLength, hole, key, instrument);
    }

    SpringAsked withLength(String text) {
        return new SpringAsked(wire, text, toWire, toLength, hole, key, instrument);
    }

    SpringAsked withToWire(String text) {
        return new SpringAsked(wire, length, text, toLength, hole, key, instrument);
    }

    SpringAsked withToLength(String text) {
        return new SpringAsked(wire, length, toWire, text, hole, key, instrument);
    }

    SpringAsked withHole(String text) {
        return new SpringAsked(wire, length, toWire, toLength, text, key, instrument);
    }

    SpringAsked onKey(String text) {
        return new SpringAsked(wire, length, toWire, toLength, hole, text, instrument);
    }

    SpringAsked on(String member) {
        return new SpringAsked(wire, length, toWire, toLength, hole, key, member);
    }
}
