package hornbook.catalogue.picture;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.CautionLevel;
import hornbook.catalogue.entry.Condition;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitKind;
import hornbook.catalogue.entry.TraitValue;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The shipped drawings: none missing, none outside the subset, no two values of a trait alike. */
class PicturesTest {
    private static final Pictures PICTURES = new Pictures();

    static List<DrawnTrait> drawnTraits() {
        return PICTURES.drawnTraits();
    }

    @Test
    void drawsTheTwentyMostTellingTraitsAndThoseThatGuardAStop() {
        assertThat(drawnTraits().stream().filter(DrawnTrait::telling)).hasSize(20);
        assertThat(drawnTraits()).allMatch(t -> t.telling() || t.stop());
        double least = drawnTraits().stream()
                .filter(DrawnTrait::telling)
                .mapToDouble(t -> t.bits().orElseThrow())
                .min()
                .orElseThrow();
        assertThat(drawnTraits().stream().filter(t -> !t.telling()))
                .allMatch(t -> t.bits().orElse(0) < least);
    }

    @Test
    void noDrawingIsMissing() {
        assertThat(PICTURES.missing(drawnTraits())).isEmpty();
    }

    @Test
    void saysWhatIsMissing() {
        var trait = new DrawnTrait("tone-hole-rim", OptionalDouble.empty(), true, true, List.of("rolled", "furled"));
        assertThat(PICTURES.missing(List.of(trait))).containsExactly("tone-hole-rim--furled");
        assertThat(PICTURES.picture("tone-hole-rim", "furled")).isEmpty();
        assertThat(PICTURES.look("no-such-trait")).isEmpty();
    }

    private static final List<String> HORNS = List.of("straight", "tenor", "baritone");

    /** Each member of the family is drawn with every cup the trade has, and differs from the alto. */
    @Test
    void everyCupIsOnEveryHorn() {
        Set<String> cups = new HashSet<>(Catalogue.shipped().cups().keySet());
        for (String member : List.of("sopranino", "soprano", "alto", "tenor", "baritone", "bass", "c-melody")) {
            Set<String> drawn = PICTURES.horn(member).shapes().stream()
                    .map(Shape::id)
                    .filter(id -> !id.isEmpty())
                    .collect(Collectors.toSet());
            Set<String> wanted = new HashSet<>(cups);
            if (member.startsWith("sopran")) {
                wanted.remove("cup-low-a");
            }
            assertThat(drawn).as(member).isEqualTo(wanted);
        }
        assertThat(PICTURES.horn("tenor")).isNotEqualTo(PICTURES.horn("alto")).isNotEqualTo(PICTURES.horn("baritone"));
    }

    @Test
    void noFileIsLeftOver() throws IOException, URISyntaxException {
        Set<String> wanted = new HashSet<>(Set.of("horn.svg", "cant-tell.svg", "SUBSET.md", "drawn-traits.txt"));
        HORNS.forEach(horn -> wanted.add("horn-" + horn + ".svg"));
        for (DrawnTrait trait : drawnTraits()) {
            wanted.add(trait.trait() + ".look.svg");
            trait.values().forEach(value -> wanted.add(trait.trait() + "--" + value + ".svg"));
        }
        Path folder = Path.of(
                Objects.requireNonNull(Pictures.class.getResource("/hornbook/catalogue/pictures/drawn-traits.txt"))
                        .toURI());
        try (Stream<Path> files = Files.list(folder.getParent())) {
            assertThat(files.map(f -> f.getFileName().toString())).containsExactlyInAnyOrderElementsOf(wanted);
        }
    }

    /** Values and stop quirks as the shipped entries have them; the list follows the entries, not the reverse. */
    @Test
    void theListAgreesWithTheEntries() {
        Catalogue shipped = Catalogue.shipped();
        for (DrawnTrait drawn : drawnTraits()) {
            assertThat(shipped.traits()).containsKey(drawn.trait());
            assertThat(shipped.traits().get(drawn.trait()).values())
                    .as(drawn.trait())
                    .extracting(TraitValue::id)
                    .containsExactlyElementsOf(drawn.values());
        }
        Set<String> guards = shipped.quirks().values().stream()
                .filter(q -> q.caution() == CautionLevel.STOP)
                .flatMap(q -> traits(q.when()))
                .filter(id -> chosen(shipped.traits().get(id)))
                .collect(Collectors.toSet());
        Set<String> listed = drawnTraits().stream()
                .filter(DrawnTrait::stop)
                .map(DrawnTrait::trait)
                .collect(Collectors.toSet());
        assertThat(listed).isNotEmpty().isEqualTo(guards);
    }

    @ParameterizedTest
    @MethodSource("drawnTraits")
    void everyValueIsDrawnInsideTheSubsetAndUnlikeTheOthers(DrawnTrait trait) {
        List<Picture> pictures = trait.values().stream()
                .map(value -> PICTURES.picture(trait.trait(), value).orElseThrow())
                .toList();
        assertThat(pictures.stream().map(PicturesTest::lines)).doesNotHaveDuplicates();
        assertThat(pictures).extracting(Picture::alt).doesNotHaveDuplicates();
        assertThat(pictures).allMatch(p -> p.width() == 160 && p.height() == 160);
        assertThat(PICTURES.look(trait.trait()).orElseThrow().alt()).startsWith("Where to look");
    }

    /** The check above finds likeness however it is written, and is not misled by hatching. */
    @Test
    void likenessIsOfLinesNotOfLetters() {
        Shape round = new Shape(
                ShapeKind.PATH, Pen.LINE, "", "m15 10a5 5 0 0 1-5 5 5 5 0 0 1-5-5 5 5 0 0 1 5-5 5 5 0 0 1 5 5z");
        Shape circle = new Shape(
                ShapeKind.CIRCLE,
                Pen.LINE,
                "",
                Geometry.path(ShapeKind.CIRCLE, Map.of("cx", "10", "cy", "10.1", "r", "5")));
        Shape hatch = new Shape(ShapeKind.PATH, Pen.HATCH, "", "M0 0 L5 5");
        Shape accent = new Shape(ShapeKind.PATH, Pen.PART, "", "M0 0 L5 5");
        assertThat(lines(of(round))).isEqualTo(lines(of(circle))).isEqualTo(lines(of(circle, hatch)));
        assertThat(lines(of(round))).isNotEqualTo(lines(of(round, accent)));
    }

    @Test
    void theHornBearsEveryCupOnce() {
        List<String> ids = PICTURES.horn().shapes().stream()
                .map(Shape::id)
                .filter(id -> !id.isEmpty())
                .toList();
        assertThat(ids)
                .isNotEmpty()
                .containsExactlyInAnyOrderElementsOf(Catalogue.shipped().cups().keySet());
        assertThat(PICTURES.cantTell().alt()).isNotEmpty();
    }

    private static boolean chosen(@Nullable Trait trait) {
        return trait != null && (trait.kind() == TraitKind.ONE || trait.kind() == TraitKind.MANY);
    }

    private static Stream<String> traits(Condition condition) {
        return condition instanceof Condition.Is is
                ? Stream.of(is.trait())
                : condition.parts().stream().flatMap(PicturesTest::traits);
    }

    /** The lines of a picture to one unit, the order of painting and the hatching left out. */
    private static Set<String> lines(Picture picture) {
        return picture.shapes().stream()
                .filter(shape -> shape.pen() != Pen.HATCH)
                .map(shape -> shape.pen().word() + " " + Outline.of(shape.path(), 1))
                .collect(Collectors.toSet());
    }

    private static Picture of(Shape... shapes) {
        return new Picture("trait", "value", "Something.", 160, 160, List.of(shapes));
    }
}
