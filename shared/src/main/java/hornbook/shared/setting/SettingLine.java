package hornbook.shared.setting;

import org.jspecify.annotations.Nullable;

/**
 * A setting as it stands.
 *
 * @param value as a person writes it; missing where it is not set
 * @param usual what holds where it is not set
 * @param form what may be written
 * @param trouble why what stands in the books cannot be used; missing where nothing is wrong
 */
public record SettingLine(
        String name,
        @Nullable String value,
        String usual,
        String meaning,
        String form,
        @Nullable String trouble) {}
