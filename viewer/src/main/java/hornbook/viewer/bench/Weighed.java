package hornbook.viewer.bench;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.identify.Answer;
import hornbook.catalogue.identify.Comparison;
import org.jspecify.annotations.Nullable;

/**
 * What the looks come to.
 *
 * @param differ what parts the first two; null where there are no two
 * @param catalogue the knowledge it was weighed against, for its words
 */
record Weighed(Answer answer, @Nullable Comparison differ, Catalogue catalogue) {}
