package hornbook.catalogue.edit;

import hornbook.catalogue.entry.Provenance.Basis;

/** How it is written where a statement comes from. */
public final class Telling {
    private Telling() {}

    /**
     * The source, in the words by which its sort is known again.
     *
     * @param detail the job, for this shop; the name of what was published; for the others what there is to add
     * @return empty where something published has no name
     */
    public static String source(Basis basis, String detail) {
        String more = detail.strip();
        return switch (basis) {
            case THIS_SHOP -> joined("this shop, ", "this shop", more);
            case COMMON_PRACTICE -> joined("common practice; ", "common practice", more);
            case MEMORY -> joined("from memory; ", "from memory", more);
            case PUBLISHED -> more;
        };
    }

    private static String joined(String before, String alone, String more) {
        return more.isEmpty() ? alone : before + more;
    }
}
