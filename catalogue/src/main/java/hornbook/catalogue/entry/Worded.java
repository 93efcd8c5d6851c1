package hornbook.catalogue.entry;

import com.fasterxml.jackson.annotation.JsonValue;

/** What has a fixed word in files and commands. */
public interface Worded {
    /** The word, in small letters. */
    @JsonValue
    String word();
}
