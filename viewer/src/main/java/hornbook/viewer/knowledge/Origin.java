package hornbook.viewer.knowledge;

import hornbook.catalogue.edit.Telling;
import hornbook.catalogue.entry.Provenance.Basis;
import org.jspecify.annotations.Nullable;

/**
 * What was answered to: where do you know this from, and how sure is it?
 *
 * @param asBefore whether what the own entry said of it stands
 * @param basis null until it is answered
 * @param detail job, name of what was published, or what there is to add
 */
record Origin(boolean asBefore, @Nullable Basis basis, String detail, String sureness) {
    static final Origin NOT_TOLD = new Origin(false, null, "", "");

    static Origin before(String sureness) {
        return new Origin(true, null, "", sureness);
    }

    Origin basis(Basis told) {
        return new Origin(false, told, detail, sureness);
    }

    Origin detail(String told) {
        return new Origin(asBefore, basis, told, sureness);
    }

    Origin sureness(String told) {
        return new Origin(asBefore, basis, detail, told);
    }

    /** As the entry says it; empty where it was not told. */
    String source(String before) {
        if (asBefore) {
            return before;
        }
        return basis == null ? "" : Telling.source(basis, detail);
    }
}
