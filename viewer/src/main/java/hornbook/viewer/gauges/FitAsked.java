package hornbook.viewer.gauges;

import hornbook.indexer.fit.FitQuestion;
import java.util.List;

/** The fields of the fit pane as they stand. */
record FitAsked(boolean reserve, Written<Field> fields) {
    static final FitAsked NOTHING = new FitAsked(false, Written.nothing());

    /** What can be told: the kind by its id or what was typed of it, the horn's model by its id or title. */
    enum Field {
        KIND,
        DIAMETER,
        LENGTH,
        BORE,
        THREAD,
        MODEL
    }

    FitQuestion question() {
        return new FitQuestion(
                at(Field.KIND),
                fields.told(Field.DIAMETER),
                fields.told(Field.LENGTH),
                fields.told(Field.BORE),
                fields.told(Field.THREAD),
                List.of(),
                List.of(),
                fields.told(Field.MODEL),
                reserve,
                1);
    }

    /** As typed; blank where nothing was. */
    String at(Field field) {
        return fields.at(field);
    }

    FitAsked with(Field field, String text) {
        return new FitAsked(reserve, fields.with(field, text));
    }

    FitAsked withReserve(boolean yes) {
        return new FitAsked(yes, fields);
    }
}
