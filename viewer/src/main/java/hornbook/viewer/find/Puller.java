package hornbook.viewer.find;

/** Shows a drawer in its cabinet. */
public interface Puller {
    /**
     * Pulls it.
     *
     * @param lot the lot to take in hand; empty for none
     * @param then the sign typed over the open drawer at once; empty for none
     */
    void pull(String drawer, String lot, String then);
}
