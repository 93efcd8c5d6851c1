package hornbook.shared.measure;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.math.BigDecimal;

/**
 * A standard screw thread. Two threads are the same only if they are the same designation: M6x1 and 0 BA share
 * diameter and pitch and are not the same.
 *
 * @param designation as the tables write it: {@code M2.5x0.45}, {@code 3-48 UNC}, {@code 6 BA}, {@code S3}
 * @param series within the system: coarse, fine, UNC, old-ASME, withdrawn …
 * @param major nominal diameter
 * @param pitchDiameter basic (effective) diameter, tabulated to 0.1 µm
 * @param minorInternal basic minor diameter of the hole
 * @param minorExternal diameter at the root of the screw
 */
public record Thread(
        ThreadSystem system,
        String designation,
        String series,
        Length major,
        Pitch pitch,
        Length pitchDiameter,
        Length minorInternal,
        Length minorExternal,
        String note,
        Provenance provenance) {

    static Thread of(NamedCsvRecord row) {
        ThreadSystem system = ThreadSystem.ofTable(row.getField("system"));
        String designation = row.getField("designation");
        return new Thread(
                system,
                designation,
                row.getField("series"),
                // The table rounds 3/32 in to 0.1 µm; the designation is exact.
                system.inch() ? InchSize.of(designation).major() : mm(row, "major_mm"),
                system.inch() ? InchSize.of(designation).pitch() : Pitch.ofMillimetres(row.getField("pitch_mm")),
                mm(row, "basic_pitch_dia_mm"),
                mm(row, "basic_minor_internal_mm"),
                mm(row, "minor_external_root_mm"),
                row.getField("note"),
                Provenance.of(row));
    }

    private static Length mm(NamedCsvRecord row, String field) {
        return Length.ofMillimetres(row.getField(field));
    }

    /** No longer made by its standard, or only listed as a special. */
    public boolean rare() {
        return series.startsWith("withdrawn")
                || series.equals("old-ASME")
                || series.equals("UNS")
                || system == ThreadSystem.LOEWENHERZ;
    }

    /**
     * Percentage of full thread left in a hole: 100 (major − hole) / full depth, as Machinery's Handbook reckons it.
     */
    public double percentInHole(Length hole) {
        return 100 * major.minus(hole).mm() / (system.fullDepth() * pitch.mm());
    }

    /** The hole that leaves a percentage of thread, rounded to the nanometre. */
    public Length holeFor(double percent) {
        double hole = major.mm() - percent / 100 * system.fullDepth() * pitch.mm();
        return Length.ofMillimetres(BigDecimal.valueOf(hole).toPlainString());
    }
}
