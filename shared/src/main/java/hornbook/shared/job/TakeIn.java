package hornbook.shared.job;

import hornbook.shared.shop.BadInput;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A horn comes in.
 *
 * @param horn number of a horn that was here before, null for a new one
 * @param instrument of a new horn, as a value of {@code family-member}
 * @param serial of a new horn, as read, doubtful digits as {@code ?}
 * @param soldAs name on a new horn that need not be its maker's
 * @param kind overhaul, partial, regulate, quick, neck, body
 * @param complaint in the owner's words
 * @param quotedMin minutes told to the owner
 * @param ownerCode never a name
 * @param agreedTo what the owner said yes to, that cannot be undone or leaves a mark
 * @param note what came with it, earlier repairs
 */
public record TakeIn(
        @Nullable String horn,
        String instrument,
        String serial,
        @Nullable String soldAs,
        String kind,
        String complaint,
        @Nullable LocalDate promised,
        @Nullable Integer quotedMin,
        @Nullable String ownerCode,
        @Nullable String agreedTo,
        String note) {

    public TakeIn {
        quotable(quotedMin);
    }

    /** @throws BadInput where so many minutes can be told to nobody */
    static void quotable(@Nullable Integer minutes) {
        if (minutes != null && minutes < 1) {
            throw new BadInput(minutes + " minutes cannot be quoted: name one or more");
        }
    }
}
