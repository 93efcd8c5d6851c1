package hornbook.shared.job;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.PersonCode;
import java.time.LocalDate;
import java.util.List;
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

    /** Kinds of job. */
    public static final List<String> KINDS = List.of("quick", "regulate", "partial", "overhaul", "neck", "body");

    /** More than a thousand hours is a slip of the finger. */
    private static final int LONGEST_MIN = 60_000;

    private static final int LONGEST_YEARS = 3;

    public TakeIn {
        quotable(quotedMin);
        if (complaint.isBlank()) {
            throw new BadInput("the complaint is empty: write what the owner says of the horn");
        }
        if (!KINDS.contains(kind)) {
            throw new BadInput("“" + kind + "” is no kind of job: write one of " + String.join(", ", KINDS));
        }
        ownerCode = ownerCode == null ? null : PersonCode.read(ownerCode);
    }

    /** @throws BadInput where so many minutes can be told to nobody */
    static void quotable(@Nullable Integer minutes) {
        if (minutes != null && (minutes < 1 || minutes > LONGEST_MIN)) {
            throw new BadInput(minutes + " minutes cannot be quoted: name 1 to " + LONGEST_MIN);
        }
    }

    /** @throws BadInput where that day is over */
    static void promisable(@Nullable LocalDate day, LocalDate today) {
        if (day != null && day.isBefore(today)) {
            throw new BadInput(day + " is over: promise a day from " + today + " on");
        }
        if (day != null && day.isAfter(today.plusYears(LONGEST_YEARS))) {
            throw new BadInput(day + " is years away: look at the year");
        }
    }
}
