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
 * @param avalancheJoules energy of one pulse that it stands in breakdown
 * @param thermal how its heat gets away, every figure known
 * @param sources where each figure is from
 */
public record Ratings(
        double averageAmps,
        double surgeAmps,
        double pulseAmpsSquaredSeconds,
        double inverseVolts,
        double watts,
        double junctionToAirKelvinPerWatt,
        double avalancheJoules,
        Thermal thermal,
        List<String> sources) {
    /** Copies the list. */
    public Ratings {
        sources = List.copyOf(sources);
    }

    /** With nothing known of avalanches, and the case that is usual for the junction-to-air resistance. */
    public Ratings(
            double averageAmps,
            double surgeAmps,
            double pulseAmpsSquaredSeconds,
            double inverseVolts,
            double watts,
            double junctionToAirKelvinPerWatt,
            List<String> sources) {
        this(
                averageAmps,
                surgeAmps,
                pulseAmpsSquaredSeconds,
                inverseVolts,
                watts,
                junctionToAirKelvinPerWatt,
                Double.POSITIVE_INFINITY,
                Thermal.usual(junctionToAirKelvinPerWatt),
                sources);
    }

    /** The same with these sources. */
    Ratings from(List<String> others) {
        return new Ratings(
                averageAmps,
                surgeAmps,
                pulseAmpsSquaredSeconds,
                inverseVolts,
                watts,
                junctionToAirKelvinPerWatt,
                avalancheJoules,
                thermal,
                others);
    }
}
