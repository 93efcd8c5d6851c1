package hornbook.viewer.paper.owner;

import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.catalogue.estimate.Price;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a quote sheet says. Of the owner no more than a code, and that only where it was asked for.
 *
 * @param number of the job; empty where there is none yet
 * @param horn what it is, as far as it is known
 * @param complaint in the owner's words; may be empty
 * @param agreed one-way changes that already have their yes
 * @param mayCome what may come up and change price and consent, by name
 * @param notDone what is left out on purpose
 */
public record Quote(
        String number,
        String horn,
        String complaint,
        @Nullable String owner,
        @Nullable LocalDate promised,
        EstimateAnswer time,
        @Nullable Price price,
        List<String> agreed,
        List<String> mayCome,
        List<String> notDone) {
    /** Keeps its own copies. */
    public Quote {
        agreed = List.copyOf(agreed);
        mayCome = List.copyOf(mayCome);
        notDone = List.copyOf(notDone);
    }
}
