package hornbook.viewer.gauges;

import hornbook.indexer.fit.FitQuestion;
import java.util.List;

/**
 * The fields of the fit pane as they stand.
 *
 * @param kind id of the chosen kind, or what was typed of it
 * @param model id or title of the horn's model
 */
record FitAsked(
        String kind, String diameter, String length, String bore, String thread, String model, boolean reserve) {
    static final FitAsked NOTHING = new FitAsked("", "", "", "", "", "", false);

    FitQuestion question() {
        return new FitQuestion(
                kind,
                Typed.in(diameter),
                Typed.in(length),
                Typed.in(bore),
                Typed.in(thread),
                List.of(),
                List.of(),
                Typed.in(model),
                reserve,
                1);
    }

    FitAsked ofKind(String id) {
        return new FitAsked(id, diameter, length, bore, thread, model, reserve);
    }

    FitAsked withDiameter(String text) {
        return new FitAsked(kind, text, length, bore, thread, model, reserve);
    }

    FitAsked withLength(String text) {
        return new FitAsked(kind, diameter, text, bore, thread, model, reserve);
    }

    FitAsked withBore(String text) {
        return new FitAsked(kind, diameter, length, text, thread, model, reserve);
    }

    FitAsked withThread(String text) {
        return new FitAsked(kind, diameter, length, bore, text, model, reserve);
    }

    FitAsked onModel(String text) {
        return new FitAsked(kind, diameter, length, bore, thread, text, reserve);
    }

    FitAsked withReserve(boolean yes) {
        return new FitAsked(kind, diameter, length, bore, thread, model, yes);
    }
}
