package hornbook.viewer.gauges;

import hornbook.indexer.fit.FitAnswer;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the fit pane shows.
 *
 * @param offered kinds that what was typed may mean; none once one is chosen
 * @param trouble which field cannot be read, and why
 */
record FitView(
        FitAsked asked,
        List<PieceKind> offered,
        @Nullable FitAnswer answer,
        @Nullable String trouble) {
    static final FitView NOTHING = new FitView(FitAsked.NOTHING, List.of(), null, null);
}
