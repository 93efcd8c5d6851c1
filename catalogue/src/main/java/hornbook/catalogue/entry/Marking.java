package hornbook.catalogue.entry;

/**
 * A way of looking that leaves a mark.
 *
 * @param way what is done to the horn
 * @param onlyWay true where the trait cannot be told without it
 */
public record Marking(String way, boolean onlyWay) {

    static Marking from(Fields in) {
        return new Marking(in.text("way"), in.yes("only_way"));
    }
}
