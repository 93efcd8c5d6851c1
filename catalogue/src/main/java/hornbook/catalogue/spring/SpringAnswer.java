package hornbook.catalogue.spring;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How stiff a spring is, and what would change it.
 *
 * @param newtonPerMm force at the tip for a millimetre of travel, of steel
 * @param gramsPerMm the same as weight on a gauge
 * @param changePercent what the change asked for does to the stiffness; missing where none was asked for
 * @param sameStiffness wire diameter or strip thickness, mm, as stiff at the new length; missing where none was asked
 * @param wires sizes near it, thinner to thicker
 * @param usual what the keys usually have
 * @param remarks what to mind
 */
public record SpringAnswer(
        double newtonPerMm,
        double gramsPerMm,
        @Nullable Double changePercent,
        @Nullable Double sameStiffness,
        List<Wire> wires,
        List<Usual> usual,
        List<String> remarks) {
    /** Keeps its own copies. */
    public SpringAnswer {
        wires = List.copyOf(wires);
        usual = List.copyOf(usual);
        remarks = List.copyOf(remarks);
    }

    /**
     * A size that can be had.
     *
     * @param name {@code 1.05 mm} or {@code music wire 19}
     * @param mm wire diameter, or thickness of strip
     * @param changePercent stiffness against the old spring, at the length asked
     * @param goesIn whether the hole takes it with the usual play; missing where no hole was given
     */
    public record Wire(
            String name,
            double mm,
            double changePercent,
            @Nullable Boolean goesIn) {}

    /**
     * Keys and the wire they usually have on that instrument.
     *
     * @param from mm
     * @param to mm
     * @param stands thinner, within or thicker: where the old spring stands
     */
    public record Usual(String keys, double from, double to, String stands, String sureness) {}
}
