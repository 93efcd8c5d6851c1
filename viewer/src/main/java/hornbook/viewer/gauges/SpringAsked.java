package hornbook.viewer.gauges;

import hornbook.catalogue.spring.SpringQuestion;
import hornbook.shared.measure.Length;
import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.BadInput;
import java.util.Optional;

/** The fields of the springs pane as they stand: a needle spring as measured, and what is thought of in its place. */
record SpringAsked(String instrument, Written<Field> fields) {
    static final SpringAsked NOTHING = new SpringAsked("alto", Written.nothing());

    /** What can be told: the wire's diameter, its free length from post face to cradle, the keys it serves. */
    enum Field {
        WIRE("wire"),
        LENGTH("length"),
        TO_WIRE("another wire"),
        TO_LENGTH("another length"),
        HOLE("hole"),
        KEY("key");

        private final String word;

        Field(String word) {
            this.word = word;
        }
    }

    boolean blank() {
        return fields.told(Field.WIRE).isEmpty() || fields.told(Field.LENGTH).isEmpty();
    }

    /** @throws BadInput naming the field that is no size */
    SpringQuestion question(SizeReader sizes) {
        return new SpringQuestion(
                size(sizes, Field.WIRE),
                Optional.empty(),
                Optional.empty(),
                size(sizes, Field.LENGTH).orElseThrow(),
                size(sizes, Field.TO_WIRE),
                size(sizes, Field.TO_LENGTH),
                size(sizes, Field.HOLE),
                fields.told(Field.KEY),
                instrument);
    }

    private Optional<Length> size(SizeReader sizes, Field field) {
        return fields.told(field).map(text -> {
            var read = sizes.length(text, LengthUnit.MILLIMETRE);
            return read.found()
                    .orElseThrow(() ->
                            new BadInput(field.word + ": " + read.refusal().orElse("is no size")));
        });
    }

    SpringAsked with(Field field, String text) {
        return new SpringAsked(instrument, fields.with(field, text));
    }

    SpringAsked on(String member) {
        return new SpringAsked(member, fields);
    }
}
