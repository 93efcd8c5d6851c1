package hornbook.shared.shop;

/** So many of a thing, in words: 1 page, 2 pages, 3 entries. */
public final class Counted {
    private Counted() {}

    /** @param one what one of them is called */
    public static String of(long many, String one) {
        if (many == 1) {
            return many + " " + one;
        }
        return many + " "
                + (one.endsWith("y") && !one.matches(".*[aeiou]y")
                        ? one.substring(0, one.length() - 1) + "ies"
                        : one + "s");
    }
}
