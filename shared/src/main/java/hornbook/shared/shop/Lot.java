package hornbook.shared.shop;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Like parts, or a supply, in one place. Lies in a drawer or at a place, never both. */
public record Lot(
        String id,
        @Nullable String drawer,
        @Nullable String place,
        String item,
        String title,
        List<String> fitsMakes,
        List<String> fitsModels,
        String dimensions,
        @Nullable String thread,
        String material,
        String colour,
        LotState state,
        Count count,
        boolean reserve,
        boolean keepsake,
        @Nullable String supplier,
        @Nullable Integer pack,
        String note)
        implements ShopRecord {
    /** How the kinds end that stand for what is not known, as part-screw-unknown. */
    private static final String UNKNOWN = "-unknown";

    public Lot {
        if ((drawer == null) == (place == null)) {
            throw new BadInput("lot " + id + ": drawer or place must be given, and not both");
        }
    }

    /** Where it lies: the id of a drawer or of a place. */
    public String lies() {
        return drawer != null ? drawer : java.util.Objects.requireNonNull(place);
    }

    /** A grab bag, or pieces that nobody has gauged: what they are is found out piece by piece. */
    public boolean notYetKnown() {
        return item.endsWith(UNKNOWN);
    }

    public Lot withCount(Count other) {
        return with(drawer, place, other, reserve, keepsake, supplier, note);
    }

    public Lot withNote(String other) {
        return with(drawer, place, count, reserve, keepsake, supplier, other);
    }

    public Lot withReserve(boolean other) {
        return with(drawer, place, count, other, keepsake, supplier, note);
    }

    public Lot withKeepsake(boolean other) {
        return with(drawer, place, count, reserve, other, supplier, note);
    }

    public Lot boughtFrom(String other) {
        return with(drawer, place, count, reserve, keepsake, other, note);
    }

    /** The same pieces elsewhere: in a drawer, or at a place. */
    public Lot lyingIn(@Nullable String otherDrawer, @Nullable String otherPlace) {
        return with(otherDrawer, otherPlace, count, reserve, keepsake, supplier, note);
    }

    private Lot with(
            @Nullable String d,
            @Nullable String p,
            Count counted,
            boolean aside,
            boolean kept,
            @Nullable String from,
            String said) {
        return new Lot(
                id,
                d,
                p,
                item,
                title,
                fitsMakes,
                fitsModels,
                dimensions,
                thread,
                material,
                colour,
                state,
                counted,
                aside,
                kept,
                from,
                pack,
                said);
    }

    /** Like pieces as a lot of their own, none of them counted yet. */
    public Lot apartAs(String other) {
        return new Lot(
                other,
                drawer,
                place,
                item,
                title,
                fitsMakes,
                fitsModels,
                dimensions,
                thread,
                material,
                colour,
                state,
                Count.ZERO,
                reserve,
                keepsake,
                supplier,
                pack,
                note);
    }
}
