package hornbook.catalogue.entry;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something used up.
 *
 * @param group what sort: pad, felt, solvent …
 * @param leadDays typical; the shop's own deliveries replace it
 * @param hazards ids of cautions; none does not mean harmless
 * @param fit how it is asked for and worked
 * @param source published source, common practice, from memory, or this shop with its jobs
 * @param sureness how sure, in words
 */
public record Supply(
        String id,
        String title,
        List<String> otherNames,
        String group,
        @Nullable String sizes,
        @Nullable String unit,
        @Nullable String typicalPack,
        @Nullable String usedPerJob,
        @Nullable Integer leadDays,
        @Nullable Integer shelfLifeMonths,
        List<String> hazards,
        @Nullable String storage,
        @Nullable String caution,
        @Nullable Fitting fit,
        String source,
        String sureness)
        implements Thing {

    /** Keeps its own copies. */
    public Supply {
        otherNames = List.copyOf(otherNames);
        hazards = List.copyOf(hazards);
    }

    static Supply from(Fields in) {
        return new Supply(
                in.text("id"),
                in.text("title"),
                in.texts("other_names"),
                in.text("group"),
                in.optionalText("sizes"),
                in.optionalText("unit"),
                in.optionalText("typical_pack"),
                in.optionalText("used_per_job"),
                in.optionalWhole("lead_days"),
                in.optionalWhole("shelf_life_months"),
                in.texts("hazards"),
                in.optionalText("storage"),
                in.optionalText("caution"),
                in.optional("fit", Fitting::from),
                in.text("source"),
                in.text("sureness"));
    }
}
