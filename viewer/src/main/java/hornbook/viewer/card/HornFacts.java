package hornbook.viewer.card;

import hornbook.catalogue.entry.Make;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Seller;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitValue;
import hornbook.catalogue.entry.Years;
import hornbook.catalogue.picture.Picture;
import hornbook.catalogue.picture.Pictures;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What knowledge of horns says: makes, models, sellers' names, traits. */
final class HornFacts {
    private final Blocks blocks;
    private final Titles titles;

    HornFacts(Blocks blocks, Titles titles) {
        this.blocks = blocks;
        this.titles = titles;
    }

    void of(Make make) {
        blocks.text("Other names", make.otherNames())
                .text("Place", make.place())
                .text("Years", years(make.years()))
                .text("", make.notes());
    }

    void of(Model model) {
        blocks.links("Make", titles.links(java.util.List.of(model.make())))
                .text("Years", years(model.years()))
                .text("Serials", serials(model))
                .links("Quirks", titles.links(model.quirksKnown()))
                .text("Threads", pairs(model.threads()))
                .text("", model.notes())
                .text("Horns seen in this shop", model.hornsSeen() == 0 ? "" : Integer.toString(model.hornsSeen()));
    }

    private static String serials(Model model) {
        return model.serialAnchors().stream()
                .map(anchor -> anchor.serial() + " in " + anchor.year())
                .collect(Collectors.joining(", "));
    }

    void of(Seller seller) {
        blocks.text("", "A name engraved by somebody who did not make the horn.")
                .links(
                        "Made by",
                        seller.madeBy().stream()
                                .map(by -> titles.link(by.of(), "%.0f %%".formatted(by.weight() * 100)))
                                .toList())
                .text("Years", years(seller.years()))
                .text("How it is known", seller.howKnown());
    }

    void of(Trait trait) {
        blocks.text("", trait.question())
                .text("How to look", trait.look())
                .text("Effort", trait.cost().word())
                .add(drawn(trait))
                .text("Unit", trait.unit())
                .text("", trait.missNote());
    }

    private static Block drawn(Trait trait) {
        Pictures pictures = new Pictures();
        return new Block.Drawn(
                pictures.look(trait.id()),
                trait.values().stream()
                        .map(value -> seen(value, pictures.picture(trait.id(), value.id())))
                        .toList());
    }

    private static Block.Seen seen(TraitValue value, Optional<Picture> picture) {
        return new Block.Seen(value.id().replace('-', ' '), value.description(), picture);
    }

    private static String pairs(Map<String, String> pairs) {
        return pairs.entrySet().stream()
                .map(e -> e.getKey() + ": " + e.getValue())
                .collect(Collectors.joining("\n"));
    }

    private static String years(@Nullable Years years) {
        if (years == null) {
            return "";
        }
        String from = years.from() == null ? "?" : years.from().toString();
        String to = years.to() == null ? "?" : years.to().toString();
        return from + " to " + to;
    }
}
