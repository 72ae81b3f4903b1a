package fusetale.circuit;

import java.util.List;

/**
 * What a part stands, from its model file; a figure that is not known is infinite.
 *
 * @param averageAmps steady current (mean for junctions, r.m.s. for others)
 * @param surgeAmps one half-cycle of 60 Hz
 * @param pulseAmpsSquaredSeconds I²t for less than a half-cycle
 * @param inverseVolts reverse or blocking voltage
 * @param watts dissipation
 * @param junctionToAirKelvinPerWatt thermal resistance in free air
 * @param sources where each figure is from
 */
public record Ratings(
        double averageAmps,
        double surgeAmps,
        double pulseAmpsSquaredSeconds,
        double inverseVolts,
        double watts,
        double junctionToAirKelvinPerWatt,
        List<String> sources) {
    /** Copies the list. */
    public Ratings {
        sources = List.copyOf(sources);
    }
}
