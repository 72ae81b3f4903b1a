package fusetale.mna;

/**
 * The forward branch of a junction, i = IS·(exp(v/VE) − 1) with VE = N·kT/q (W. Shockley, "The theory of p-n junctions in
 * semiconductors and p-n junction transistors", Bell System Technical Journal 28(3), 1949), made safe for any argument:
 * above {@link #MOST_AMPS} it goes on straight along its tangent, below −40·VE it is −IS (exp(−40) is under the last bit)
 * and costs no exponential. Immutable.
 */
final class Exponential {
    /** Boltzmann's constant times 298.15 K over the elementary charge (SI 2019, exact): 25.693 mV at 25 °C. */
    static final double THERMAL_VOLTS = 1.380649e-23 * 298.15 / 1.602176634e-19;

    /** Far above any current of these machines; the tangent from there on keeps Newton finite. */
    private static final double MOST_AMPS = 1e5;

    private static final double DEEP_REVERSE = -40;
    /** ln 2. */
    private static final double DOUBLING = 0.6931471805599453;

    private final double saturationAmps;
    private final double emissionVolts;
    private final double straightFrom;
    private final double criticalVolts;

    /**
     * A junction's forward branch.
     *
     * @param saturationAmps IS [A], above 0
     * @param idealityRatio N, above 0
     * @throws IllegalArgumentException where a value is not above 0 and finite
     */
    Exponential(double saturationAmps, double idealityRatio) {
        if (!(saturationAmps > 0 && saturationAmps < MOST_AMPS)) {
            throw new IllegalArgumentException("saturation current of " + saturationAmps + " A; it must be above 0");
        }
        if (!(idealityRatio > 0 && idealityRatio < 1e3)) {
            throw new IllegalArgumentException("ideality of " + idealityRatio + "; it must be above 0");
        }
        this.saturationAmps = saturationAmps;
        this.emissionVolts = idealityRatio * THERMAL_VOLTS;
        this.straightFrom = Math.log((MOST_AMPS + saturationAmps) / saturationAmps);
        // the point of strongest curvature of the exponential
        this.criticalVolts = emissionVolts * Math.log(emissionVolts / (Math.sqrt(2) * saturationAmps));
    }

    /** How far [V] from a voltage the slope stays below its double, or below the last bit of the current. */
    double reachVolts(double volts) {
        return Math.max(emissionVolts * DOUBLING, DEEP_REVERSE * emissionVolts - volts);
    }

    /** Current [A] at a voltage [V]. */
    double amps(double volts) {
        double x = volts / emissionVolts;
        if (x < DEEP_REVERSE) {
            return -saturationAmps;
        }
        if (x > straightFrom) {
            return (MOST_AMPS + saturationAmps) * (1 + x - straightFrom) - saturationAmps;
        }
        return saturationAmps * (Math.exp(x) - 1);
    }

    /** Slope [S] where the current is {@code amps}: no second exponential is needed. */
    double siemens(double amps) {
        return Math.min(amps + saturationAmps, MOST_AMPS + saturationAmps) / emissionVolts;
    }

    /**
     * Limits a step upwards: not to the voltage where Newton's tangent wants to go, but to the one where the exponential
     * carries the current that the tangent promised, v = v0 + VE·ln(1 + Δv/VE). A step that starts below the critical
     * voltage VE·ln(VE/(√2·IS)) is taken from there; a step down needs no limit, the exponential being convex.
     */
    double limited(double proposedVolts, double presentVolts) {
        if (proposedVolts <= criticalVolts || proposedVolts <= presentVolts + 2 * emissionVolts) {
            return proposedVolts;
        }
        double from = Math.max(presentVolts, criticalVolts);
        return from + emissionVolts * Math.log1p((proposedVolts - from) / emissionVolts);
    }
}
