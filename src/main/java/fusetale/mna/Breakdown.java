package fusetale.mna;

/**
 * Reverse breakdown of a junction: a second exponential that turns into a resistance,
 *
 * <pre>i = (s/r)·ln(1 + exp((u − u0)/s))</pre>
 *
 * over the reverse voltage u, with u0 such that the stated current flows at the stated voltage. Well above the knee it is
 * the usual model of a zener, a voltage behind a resistance (A. S. Sedra and K. C. Smith, Microelectronic Circuits, 5th
 * ed., §3.4); the knee lies near a twenty-fifth of the stated current, as the knee currents of the 1N47xx series do.
 *
 * <p>It passes nothing without a voltage, so that no junction gives power of its own: what the exponential leaves there, which
 * is of any size only where the stated voltage is a few knees, is taken off; and no more than half of the stated voltage lies
 * across its resistance. Immutable.
 */
final class Breakdown {
    /** A junction that never breaks down. */
    static final Breakdown NONE = new Breakdown();

    /** Knee current as a part of the stated current. */
    private static final double KNEE_RATIO = 1.0 / 25;
    /** A knee sharper than this [V] only costs iterations. */
    private static final double LEAST_KNEE_VOLTS = Exponential.THERMAL_VOLTS / 4;

    /** Share of the stated voltage that may lie across the resistance (judgement). */
    private static final double MOST_RESISTIVE_RATIO = 0.5;

    private static final double FIRMLY_OFF = -40;
    /** ln 2. */
    private static final double DOUBLING = 0.6931471805599453;

    private static final double STRAIGHT = 40;

    private final double kneeVolts;
    private final double siemens;
    private final double cornerVolts;
    private final double offBelowVolts;
    private final double restAmps;

    private Breakdown() {
        this.kneeVolts = LEAST_KNEE_VOLTS;
        this.siemens = 0;
        this.cornerVolts = Double.POSITIVE_INFINITY;
        this.offBelowVolts = Double.POSITIVE_INFINITY;
        this.restAmps = 0;
    }

    /**
     * A breakdown through a point.
     *
     * @param volts reverse voltage [V] at {@code amps}, above 0
     * @param amps current [A] there, above 0
     * @param ohms differential resistance [ohm] well above the knee, above 0; of less where most of the voltage would be its
     * @throws IllegalArgumentException where a value is not above 0 and finite
     */
    Breakdown(double volts, double amps, double ohms) {
        positive("voltage", volts);
        positive("current", amps);
        positive("resistance", ohms);
        double own = Math.min(ohms, MOST_RESISTIVE_RATIO * volts / amps);
        this.kneeVolts = Math.max(own * amps * KNEE_RATIO, LEAST_KNEE_VOLTS);
        this.siemens = 1 / own;
        double x = amps / (siemens * kneeVolts);
        double aboveCorner = x > STRAIGHT ? x : Math.log(Math.expm1(x));
        this.cornerVolts = volts - kneeVolts * aboveCorner;
        double off = cornerVolts + FIRMLY_OFF * kneeVolts;
        this.offBelowVolts = off > 0 ? off : Double.NEGATIVE_INFINITY;
        this.restAmps = off > 0 ? 0 : siemens * kneeVolts * Math.log1p(Math.exp(-cornerVolts / kneeVolts));
    }

    private static void positive(String what, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "breakdown " + what + " of " + value + "; it must be above 0 and finite");
        }
    }

    /** How far [V] from a reverse voltage the slope stays below its double, or the current nothing. */
    double reachVolts(double reverseVolts) {
        return Math.max(kneeVolts * DOUBLING, offBelowVolts - reverseVolts);
    }

    /** Whether nothing flows at this reverse voltage. */
    boolean isOff(double reverseVolts) {
        return reverseVolts < offBelowVolts;
    }

    /** exp of the distance from the knee, capped: what {@link #amps} and {@link #siemens} share. */
    double exponential(double reverseVolts) {
        return Math.exp(Math.min((reverseVolts - cornerVolts) / kneeVolts, STRAIGHT));
    }

    /** Current [A] in reverse direction: of the sign of the voltage. */
    double amps(double reverseVolts, double exponential) {
        double x = (reverseVolts - cornerVolts) / kneeVolts;
        return siemens * kneeVolts * (x > STRAIGHT ? x : Math.log1p(exponential)) - restAmps;
    }

    /** Slope [S]. */
    double siemens(double exponential) {
        return siemens * exponential / (1 + exponential);
    }

    /**
     * Limits a step into breakdown: from a junction that is off no further than four knee widths beyond the middle of the
     * knee, from where the slope is nearly that of the resistance and a plain step is right.
     *
     * @return reverse voltage to go to
     */
    double limited(double proposedReverse, double presentReverse) {
        double landing = cornerVolts + 4 * kneeVolts;
        return presentReverse < cornerVolts && proposedReverse > landing ? landing : proposedReverse;
    }
}
