package hornbook.catalogue.picture;

import java.util.List;

/**
 * A line drawing any toolkit can draw.
 *
 * @param trait the trait it belongs to; of the two pictures that belong to none, {@code horn} or {@code
 *     cant-tell}
 * @param value the value it shows; {@code look} where it shows where to look; empty where it belongs to no trait
 * @param alt what is to be seen on it, in a sentence
 * @param width of the picture, in its own units
 * @param height of the picture, in its own units
 * @param shapes in the order they are painted
 */
public record Picture(String trait, String value, String alt, double width, double height, List<Shape> shapes) {

    /** Keeps its own copy. */
    public Picture {
        shapes = List.copyOf(shapes);
    }
}
