package hornbook.catalogue.edit;

import hornbook.catalogue.entry.Worded;

/** What a draft is to what is known. */
public enum Standing implements Worded {
    /** Nothing has its id yet. */
    NEW("new"),
    /** It would stand over a shipped entry. */
    OVER_SHIPPED("own copy over the shipped one"),
    /** It would take the place of one of the shop's own. */
    OWN("own, changed");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
