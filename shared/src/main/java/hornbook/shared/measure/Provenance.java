package hornbook.shared.measure;

import de.siegmar.fastcsv.reader.NamedCsvRecord;

/**
 * Where a row of a table comes from.
 *
 * @param source the standard or handbook
 * @param sureness how it was checked; {@code from memory} where it was not
 */
public record Provenance(String source, String sureness) {

    static Provenance of(NamedCsvRecord row) {
        return new Provenance(row.getField("source"), row.getField("sureness"));
    }

    /** Whether the row, or what matters in it, was never checked against a printed or computed table. */
    public boolean fromMemory() {
        return sureness.contains("from memory");
    }
}
