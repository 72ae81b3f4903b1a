package fusetale.aftermath;

import fusetale.circuit.Mounting;
import fusetale.circuit.Thermal;

/**
 * How hot a junction gets once everything is warm: the air, plus the whole case's watts through case to air, plus the
 * junction's own through junction to case. (Series thermal resistances, the data sheets' own reckoning.)
 *
 * <p>A range, not a figure: the air inside a cabinet is 25 to 40 °C (judgement), and thermal resistances are known to a
 * quarter (judgement: typical and highest figures of data sheets lie that far apart, and common practice gives the plate 2 to
 * 4 K/W around its 3).
 */
public final class JunctionTemperature {
    /** Air inside a cabinet with its door open. */
    public static final double COOL_CELSIUS = 25;

    /** Air inside a closed cabinet in summer. */
    public static final double WARM_CELSIUS = 40;

    /** How far thermal resistances may be off, either way, as a ratio. */
    public static final double STRAY_RATIO = 0.25;

    private JunctionTemperature() {}

    /**
     * From a good day to a bad one.
     *
     * @param lowCelsius cool air, resistances at their lowest
     * @param highCelsius warm air, resistances at their highest
     */
    public record Range(double lowCelsius, double highCelsius) {}

    /**
     * Of a junction that dissipates steadily.
     *
     * @param junctionWatts mean dissipation of the junction itself: one leg of a bridge [W]
     * @param caseWatts mean dissipation of everything in its case [W]
     */
    public static Range of(double junctionWatts, double caseWatts, Thermal thermal, Mounting mounting) {
        double rise = rise(junctionWatts, caseWatts, thermal, mounting);
        return new Range(COOL_CELSIUS + (1 - STRAY_RATIO) * rise, WARM_CELSIUS + (1 + STRAY_RATIO) * rise);
    }

    /** How far a junction gets above the air [K] at the resistances as stated; arguments as in {@link #of}. */
    public static double rise(double junctionWatts, double caseWatts, Thermal thermal, Mounting mounting) {
        return junctionWatts * thermal.junctionToCaseKelvinPerWatt()
                + caseWatts * mounting.caseToAirKelvinPerWatt(thermal.caseToAirKelvinPerWatt());
    }
}
