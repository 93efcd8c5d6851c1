package hornbook.indexer.index;

/** Names of the fields of a document, and how sorts of terms are told apart within the one field of terms. */
public final class Terms {
    /** Every term of a card; its frequency is its impact, 1 to {@link Impacts#MOST}. */
    public static final String TERM = "t";
    /** The record's id, whole. */
    public static final String ID = "id";
    /** {@link Row}, written. */
    public static final String ROW = "row";
    /** What stands higher comes first in the index, so that a search may stop early. */
    static final String RANK = "rank";
    /** Sizes of one value, nanometres. */
    public static final String SIZE = "nm";
    /** Sizes from to, nanometres. */
    public static final String SPAN = "span";
    /** Runs of serial numbers. */
    public static final String RUN = "run";

    private Terms() {}

    public static String kind(String kind) {
        return "@" + kind;
    }

    /** A record by its whole number. */
    public static String id(String id) {
        return "!" + id;
    }

    public static String concept(String concept) {
        return "=" + concept;
    }

    public static String label(String word) {
        return "/" + word;
    }

    /** All words of a text together. */
    public static String whole(String words) {
        return "&" + words;
    }

    public static String thread(String designation) {
        return "~" + designation;
    }

    /** Two words that stand side by side in a name. */
    public static String pair(String first, String second) {
        return first + "_" + second;
    }

    /** The first letters, at most {@link #LETTERS}, of a word in a name. */
    public static String beginning(String letters) {
        return "^" + letters;
    }

    /** Longer beginnings are looked up among the words themselves. */
    public static final int LETTERS = 3;

    /** Whether a term is a word or number as it stands in texts. */
    public static boolean isWord(String term) {
        return !term.isEmpty() && Character.isLetterOrDigit(term.charAt(0)) && term.indexOf('_') < 0;
    }
}
