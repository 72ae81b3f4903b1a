package fusetale.mna;

/**
 * A bipolar transistor without its bulk resistances: port 0 from base to emitter, port 1 from base to collector. Transport
 * form of Ebers and Moll ("Large-signal behavior of junction transistors", Proc. IRE 42(12), 1954; transport form: J. Logan,
 * Bell System Technical Journal 50(4), 1971) with Early's effect (J. M. Early, Proc. IRE 40(11), 1952):
 *
 * <pre>
 * IF = IS·(exp(vbe/VT) − 1)     IR = IS·(exp(vbc/VT) − 1)
 * IT = (IF − IR)·(1 − vbc/VA)
 * i(base→emitter) = IF/βF + IT        i(base→collector) = IR/βR − IT
 * </pre>
 *
 * A PNP transistor is the same with all voltages and currents turned round. Collector-emitter breakdown is a knee that
 * runs into a resistance of a twentieth of the breakdown voltage per ampere (ours: it only has to end the blocking).
 */
public final class BipolarLaw implements PortLaw {
    /** Which way round the transistor is. */
    public enum Polarity {
        /** Collector current flows in. */
        NPN(1),
        /** Collector current flows out. */
        PNP(-1);

        private final double sign;

        Polarity(double sign) {
            this.sign = sign;
        }
    }

    /** Current [A] at which breakdown is stated, as the sheets of the 2N types do. */
    private static final double BREAKDOWN_AMPS = 1e-3;

    private static final double BREAKDOWN_OHMS_PER_VOLT = 1.0 / 20;
    /** Across both junctions, so that no base floats [S]. */
    private static final double LEAKAGE_SIEMENS = 1e-12;

    private final double sign;
    private final Exponential transport;
    private final double forwardGain;
    private final double reverseGain;
    private final double perEarlyVolt;
    private final double junctionFarads;
    private final Breakdown breakdown;

    private BipolarLaw(
            Polarity polarity,
            Exponential transport,
            double forwardGain,
            double reverseGain,
            double perEarlyVolt,
            double junctionFarads,
            Breakdown breakdown) {
        this.sign = polarity.sign;
        this.transport = transport;
        this.forwardGain = forwardGain;
        this.reverseGain = reverseGain;
        this.perEarlyVolt = perEarlyVolt;
        this.junctionFarads = junctionFarads;
        this.breakdown = breakdown;
    }

    /**
     * A transistor.
     *
     * @param polarity NPN or PNP
     * @param saturationAmps transport saturation current IS [A], above 0
     * @param forwardGain βF, above 0
     * @param reverseGain βR, above 0
     * @param earlyVolts Early voltage VA [V], above 0; infinite for none
     * @param junctionFarads capacitance [F] of each junction, 0 or more
     * @param breakdownVolts collector-emitter breakdown with the base open [V], above 0; infinite for none
     * @throws IllegalArgumentException where a value is out of its bounds
     */
    public static BipolarLaw of(
            Polarity polarity,
            double saturationAmps,
            double forwardGain,
            double reverseGain,
            double earlyVolts,
            double junctionFarads,
            double breakdownVolts) {
        if (!(forwardGain > 0 && reverseGain > 0 && earlyVolts > 0)) {
            throw new IllegalArgumentException("current gains " + forwardGain + " and " + reverseGain
                    + " and Early voltage " + earlyVolts + " V must be above 0");
        }
        if (!(junctionFarads >= 0 && junctionFarads < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("junction capacitance of " + junctionFarads + " F");
        }
        Breakdown breakdown = Double.isInfinite(breakdownVolts)
                ? Breakdown.NONE
                : new Breakdown(breakdownVolts, BREAKDOWN_AMPS, breakdownVolts * BREAKDOWN_OHMS_PER_VOLT);
        return new BipolarLaw(
                polarity,
                new Exponential(saturationAmps, 1),
                forwardGain,
                reverseGain,
                1 / earlyVolts,
                junctionFarads,
                breakdown);
    }

    @Override
    public int ports() {
        return 2;
    }

    @Override
    public double baselineSiemens(int port) {
        return LEAKAGE_SIEMENS;
    }

    @Override
    public double farads(int port) {
        return junctionFarads;
    }

    @Override
    public void evaluate(PortPoint at) {
        double be = sign * at.volts[0];
        double bc = sign * at.volts[1];
        double forward = transport.amps(be);
        double forwardSlope = transport.siemens(forward);
        double reverse = transport.amps(bc);
        double reverseSlope = transport.siemens(reverse);
        // a collector junction that is forward-biased beyond reason must not turn the sign of the transport current
        boolean early = bc * perEarlyVolt < 0.5;
        double widening = early ? 1 - bc * perEarlyVolt : 0.5;
        double through = (forward - reverse) * widening;
        double throughByBe = forwardSlope * widening;
        double throughByBc = -reverseSlope * widening - (early ? (forward - reverse) * perEarlyVolt : 0);
        double across = 0;
        double acrossSlope = 0;
        double ce = be - bc;
        if (!breakdown.isOff(ce)) {
            double e = breakdown.exponential(ce);
            across = breakdown.amps(ce, e);
            acrossSlope = breakdown.siemens(e);
        }
        at.amps[0] = sign * (forward / forwardGain + through + across);
        at.amps[1] = sign * (reverse / reverseGain - through - across);
        at.siemens[0] = forwardSlope / forwardGain + throughByBe + acrossSlope;
        at.siemens[1] = throughByBc - acrossSlope;
        at.siemens[2] = -throughByBe - acrossSlope;
        at.siemens[3] = reverseSlope / reverseGain - throughByBc + acrossSlope;
    }

    @Override
    public double limited(int port, double proposedVolts, double presentVolts) {
        return sign * transport.limited(sign * proposedVolts, sign * presentVolts);
    }
}
