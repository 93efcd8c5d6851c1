package hornbook.viewer.exchange;

import hornbook.shared.exchange.ImportReport;
import hornbook.shared.exchange.SheetKind;
import hornbook.shared.exchange.SheetLook;
import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the screen shows at one moment.
 *
 * @param kind what the rows of the list are; null for a whole export
 * @param from the list or folder that was named
 * @param look how the list was understood; null for a whole export, or before
 * @param told column to field, as the person said; an empty field leaves its column out
 * @param report what came of it; null before
 * @param dry whether that report is of a trial, which changed nothing
 * @param said what was done, in a sentence
 * @param trouble what cannot be done, in a sentence
 * @param doing what is being done just now
 */
record ExchangeView(
        @Nullable SheetKind kind,
        @Nullable Path from,
        @Nullable SheetLook look,
        Map<String, String> told,
        @Nullable ImportReport report,
        boolean dry,
        @Nullable String said,
        @Nullable String trouble,
        @Nullable String doing) {

    static final ExchangeView NOTHING =
            new ExchangeView(SheetKind.LOTS, null, null, Map.of(), null, false, null, null, null);

    ExchangeView of(@Nullable SheetKind other) {
        return new ExchangeView(other, from, null, Map.of(), null, false, null, null, null);
    }

    ExchangeView from(Path other) {
        return new ExchangeView(kind, other, null, Map.of(), null, false, null, null, null);
    }

    ExchangeView telling(Map<String, String> columns) {
        return new ExchangeView(kind, from, look, Map.copyOf(columns), null, false, null, null, null);
    }

    ExchangeView looked(SheetLook now) {
        return new ExchangeView(kind, from, now, told, report, dry, said, null, null);
    }

    ExchangeView reported(ImportReport now, boolean trial) {
        return new ExchangeView(kind, from, look, told, now, trial, null, null, null);
    }

    ExchangeView saying(String words) {
        return new ExchangeView(kind, from, look, told, report, dry, words, null, null);
    }

    ExchangeView troubled(String why) {
        return new ExchangeView(kind, from, look, told, report, dry, null, why, null);
    }

    ExchangeView busy(String what) {
        return new ExchangeView(kind, from, look, told, report, dry, null, null, what);
    }

    /** May it be tried or taken? */
    boolean ready() {
        return doing == null
                && from != null
                && (kind == null || (look != null && look.lacking().isEmpty()));
    }
}
