package hornbook.viewer.diagnose;

import org.jspecify.annotations.Nullable;

/**
 * What is complained of, and of which horn.
 *
 * @param words the owner's; blank where nobody said any
 * @param model id of the horn's model; null where not known
 * @param instrument as a value of {@code family-member}
 * @param job on which it is here; null where it is on none
 */
public record Complaint(
        String words,
        @Nullable String model,
        String instrument,
        @Nullable String job) {
    static final Complaint NONE = new Complaint("", null, "alto", null);
}
