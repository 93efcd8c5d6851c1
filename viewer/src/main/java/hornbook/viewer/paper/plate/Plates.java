package hornbook.viewer.paper.plate;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitValue;
import hornbook.catalogue.picture.DrawnTrait;
import hornbook.catalogue.picture.Pictures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All drawings with their words, trait by trait; the two of no trait come last. */
final class Plates {
    private final Pictures pictures = new Pictures();
    private final Catalogue catalogue;

    Plates(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Drawings that stand together, so many in a row. */
    record Group(String title, int across, List<Plate> plates) {}

    List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        pictures.drawnTraits().forEach(drawn -> groups.add(group(drawn)));
        groups.add(new Group(
                "For every trait",
                2,
                List.of(
                        new Plate(pictures.horn(), "horn", "The horn with its pad cups."),
                        new Plate(pictures.cantTell(), "can't tell", "The answer that is always there."))));
        groups.add(
                new Group("Members of the family", 2, List.of(member("soprano"), member("tenor"), member("baritone"))));
        return groups;
    }

    private Plate member(String instrument) {
        return new Plate(pictures.horn(instrument), instrument, "The " + instrument + " with its pad cups.");
    }

    private Group group(DrawnTrait drawn) {
        Optional<Trait> trait = Optional.ofNullable(catalogue.traits().get(drawn.trait()));
        Stream<Plate> look = pictures.look(drawn.trait()).stream()
                .map(picture -> new Plate(
                        picture, "where to look", trait.map(Trait::look).orElse("")));
        Stream<Plate> values = drawn.values().stream()
                .flatMap(value -> pictures.picture(drawn.trait(), value).stream()
                        .map(picture -> new Plate(picture, value, meaning(trait, value))));
        String title =
                trait.map(Trait::title).map(t -> t + " (" + drawn.trait() + ")").orElse(drawn.trait());
        return new Group(title, 4, Stream.concat(look, values).toList());
    }

    private static String meaning(Optional<Trait> trait, String value) {
        return trait.flatMap(t -> t.value(value)).map(TraitValue::description).orElse("");
    }
}
