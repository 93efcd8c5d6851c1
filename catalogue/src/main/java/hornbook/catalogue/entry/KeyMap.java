package hornbook.catalogue.entry;

import org.jspecify.annotations.Nullable;

/**
 * One key of a model as measured: what it turns on, its spring, cup, rim and resonator. Lengths in mm.
 *
 * @param key name of the key
 * @param cup id of its cup
 * @param turnsOn rod, pivots or sleeves
 * @param rod the rod's name; keys of one stack share one
 * @param diameter of the rod or tube
 * @param length of the rod, or of the tube on pivots or sleeves
 * @param thread designation
 * @param drawsOut the end its rod draws out at
 * @param spring needle or flat
 * @param springSize wire diameter, or strip thickness
 * @param source where the row comes from
 */
public record KeyMap(
        String key,
        @Nullable String cup,
        @Nullable String turnsOn,
        @Nullable String rod,
        @Nullable Double diameter,
        @Nullable Double length,
        @Nullable String thread,
        @Nullable String drawsOut,
        @Nullable String spring,
        @Nullable Double springSize,
        @Nullable Double springLength,
        @Nullable Double cupInside,
        @Nullable Double rimInside,
        @Nullable Double rimOutside,
        @Nullable Double resonator,
        @Nullable String source) {

    static KeyMap from(Fields in) {
        return new KeyMap(
                in.text("key"),
                in.optionalText("cup"),
                in.optionalText("turns_on"),
                in.optionalText("rod"),
                in.optionalNumber("diameter"),
                in.optionalNumber("length"),
                in.optionalText("thread"),
                in.optionalText("draws_out"),
                in.optionalText("spring"),
                in.optionalNumber("spring_size"),
                in.optionalNumber("spring_length"),
                in.optionalNumber("cup_inside"),
                in.optionalNumber("rim_inside"),
                in.optionalNumber("rim_outside"),
                in.optionalNumber("resonator"),
                in.optionalText("source"));
    }
}
