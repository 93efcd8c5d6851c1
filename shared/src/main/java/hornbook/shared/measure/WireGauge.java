package hornbook.shared.measure;

/**
 * One number of a wire or sheet gauge.
 *
 * @param system the gauge
 * @param number as the table writes it: {@code 18}, {@code 0}, {@code 0000}
 * @param size diameter of wire, thickness of sheet
 */
public record WireGauge(GaugeSystem system, String number, Length size, Provenance provenance) {

    /** Written so that it can be read again: {@code AWG 18}, {@code SWG 4/0}, {@code music wire 18}. */
    public String text() {
        return system.shown() + " " + (number.matches("0{2,}") ? number.length() + "/0" : number);
    }
}
