package hornbook.viewer.gauges;

import java.util.Optional;

/** What stands in a field. */
final class Typed {
    private Typed() {}

    /** Empty where nothing was typed. */
    static Optional<String> in(String field) {
        return field.isBlank() ? Optional.empty() : Optional.of(field.strip());
    }
}
