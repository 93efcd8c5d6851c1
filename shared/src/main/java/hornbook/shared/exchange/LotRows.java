package hornbook.shared.exchange;

import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.LotState;
import hornbook.shared.store.Writing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Lots: parts and supplies with their sizes, each in its place. */
final class LotRows implements SheetRows {
    private final SheetPlaces places;
    private final SizeReader sizes;
    private final Names names;
    private final LocalDate today;
    private final List<String> remarks;

    LotRows(SheetPlaces places, SizeReader sizes, Names names, LocalDate today, List<String> remarks) {
        this.places = places;
        this.sizes = sizes;
        this.names = names;
        this.today = today;
        this.remarks = remarks;
    }

    @Override
    public void take(Writing writing, Cells cells) {
        String title = cells.needed("title");
        String dimensions = dimensions(cells.cell("dimensions"));
        String thread = thread(cells.cell("thread"));
        Count count = count(cells, title);
        LotState state = state(cells.cell("state"));
        String written = cells.needed("drawer");
        Optional<String> place = places.other(written);
        String drawer = place.isPresent()
                ? null
                : places.drawer(writing, "drawer", written).id();
        refuseStanding(writing, drawer, title, dimensions);
        Fits fits = new Fits(cells.cell("fits"));
        String note = String.join(
                "; ",
                new ArrayList<>(List.of(cells.cell("note"), fits.asText()))
                        .stream().filter(part -> !part.isEmpty()).toList());
        Lot lot = new Lot(
                writing.nextId(Lot.class),
                drawer,
                place.orElse(null),
                names.thing(title).orElse(""),
                title,
                fits.makes,
                fits.models,
                dimensions,
                thread,
                cells.cell("material"),
                cells.cell("colour"),
                state,
                count,
                false,
                false,
                null,
                null,
                note);
        writing.put(lot);
        new LotCounts(writing, today, remarks).agree(lot);
    }

    /** Only a size that can be read can be found and fitted. A bare one, as 12 mm, is taken as the lot's size. */
    private String dimensions(String cell) {
        if (cell.isEmpty() || sizes.dimensions(cell).found().isPresent()) {
            return cell;
        }
        BentSize.size(cell).ifPresent(why -> {
            throw new CellRefused("dimensions", why);
        });
        return sizes.asSaid(cell)
                .found()
                .orElseThrow(() -> new CellRefused(
                        "dimensions", sizes.asSaid(cell).refusal().orElse("cannot be read")));
    }

    private @Nullable String thread(String cell) {
        if (cell.isEmpty()) {
            return null;
        }
        BentSize.thread(cell).or(() -> sizes.threads(cell).refusal()).ifPresent(why -> {
            throw new CellRefused("thread", why);
        });
        return cell;
    }

    private Count count(Cells cells, String title) {
        if (cells.cell("count").isEmpty()) {
            remarks.add("“" + title + "” has no count and was taken as some");
            return Count.Rough.SOME;
        }
        return SheetNumbers.count(cells.cell("count"));
    }

    private static LotState state(String cell) {
        return switch (cell.toLowerCase(Locale.ROOT)) {
            case "", "new" -> LotState.NEW;
            case "salvaged", "used", "second hand", "old" -> LotState.SALVAGED;
            case "blank", "stock", "raw" -> LotState.BLANK;
            default -> throw new CellRefused("state", "“" + cell + "” is none of new, salvaged, blank");
        };
    }

    private static void refuseStanding(Writing writing, @Nullable String drawer, String title, String dimensions) {
        if (drawer == null) {
            return;
        }
        writing.where(Lot.class, "drawer", drawer).stream()
                .filter(lot -> lot.title().equals(title) && lot.dimensions().equals(dimensions))
                .findFirst()
                .ifPresent(lot -> {
                    throw new CellRefused(
                            "title", "“" + title + "” lies there already as " + lot.id() + ": count that one instead");
                });
    }

    /** The makes and models that a cell names; what is not known stays as text. */
    private final class Fits {
        private final List<String> makes = new ArrayList<>();
        private final List<String> models = new ArrayList<>();
        private final List<String> unknown = new ArrayList<>();

        Fits(String cell) {
            Arrays.stream(cell.split("[;,/]"))
                    .map(String::strip)
                    .filter(n -> !n.isEmpty())
                    .forEach(this::sort);
        }

        private void sort(String name) {
            Optional<String> make = names.make(name);
            Optional<String> model = make.isPresent() ? Optional.empty() : names.model("", name, "");
            make.ifPresent(makes::add);
            model.ifPresent(models::add);
            if (make.isEmpty() && model.isEmpty()) {
                unknown.add(name);
                remarks.add("“" + name + "” is no make or model known here and was taken as text");
            }
        }

        String asText() {
            return unknown.isEmpty() ? "" : "fits " + String.join(", ", unknown);
        }
    }
}
