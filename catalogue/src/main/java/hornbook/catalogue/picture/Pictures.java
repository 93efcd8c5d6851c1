package hornbook.catalogue.picture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The shipped pictures, read when asked for. A file outside the subset is an {@link OutsideSubset}. */
public final class Pictures {
    private static final String FOLDER = "/hornbook/catalogue/pictures/";
    private static final String LOOK = "look";

    /** What that value of that trait looks like; empty where it is not drawn. */
    public Optional<Picture> picture(String trait, String value) {
        return read(trait + "--" + value, trait, value);
    }

    /** Where on the horn to look for a trait; empty where it is not drawn. */
    public Optional<Picture> look(String trait) {
        return read(trait + "." + LOOK, trait, LOOK);
    }

    /** The horn in outline; the shapes of its pad cups bear the cups' ids. */
    public Picture horn() {
        return always("horn");
    }

    /**
     * A member of the family in outline, with its pad cups as {@link #horn}.
     *
     * @param instrument a value of {@code family-member}
     */
    public Picture horn(String instrument) {
        return switch (instrument) {
            case "soprano", "sopranino" -> always("horn-straight");
            case "tenor" -> always("horn-tenor");
            case "baritone", "bass" -> always("horn-baritone");
            default -> horn();
        };
    }

    /** The answer that is always there. */
    public Picture cantTell() {
        return always("cant-tell");
    }

    /** The traits whose every value is drawn, the most telling first. */
    public List<DrawnTrait> drawnTraits() {
        try (InputStream in = file("drawn-traits.txt")) {
            if (in == null) {
                throw new IllegalStateException("the list of drawn traits is not in the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(DrawnTrait::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Names of the files that these traits should have and do not: each value's picture and the look. */
    public List<String> missing(List<DrawnTrait> traits) {
        return traits.stream().flatMap(this::names).filter(name -> !there(name)).toList();
    }

    private Stream<String> names(DrawnTrait trait) {
        return Stream.concat(
                trait.values().stream().map(value -> trait.trait() + "--" + value),
                Stream.of(trait.trait() + "." + LOOK));
    }

    private boolean there(String name) {
        return Pictures.class.getResource(FOLDER + name + ".svg") != null;
    }

    private Picture always(String name) {
        return read(name, name, "").orElseThrow(() -> new IllegalStateException(name + " is not in the program"));
    }

    private Optional<Picture> read(String name, String trait, String value) {
        try (InputStream in = file(name + ".svg")) {
            return in == null ? Optional.empty() : Optional.of(PictureReader.read(name + ".svg", trait, value, in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static @Nullable InputStream file(String name) {
        return Pictures.class.getResourceAsStream(FOLDER + name);
    }
}
