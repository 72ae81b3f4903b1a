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
    /**
     * Across both junctions, so that no base floats [S]: 0.6 nA at 60 V. Sheets of the small types allow more (2N3904: 50 nA
     * at 30 V); ten times less, and a node that hangs on junctions alone loses its digits.
     */
    static final double LEAKAGE_SIEMENS = 1e-11;

    private final double sign;
    private final Ebers ebers;
    private final double collectorFarads;
    private final Breakdown breakdown;

    private BipolarLaw(Polarity polarity, Ebers ebers, double collectorFarads, Breakdown breakdown) {
        this.sign = polarity.sign;
        this.ebers = ebers;
        this.collectorFarads = collectorFarads;
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
     * @param collectorFarads capacitance [F] of the collector junction, 0 or more; the emitter's does not matter here
     * @param breakdownVolts collector-emitter breakdown with the base open [V], above 0; infinite for none
     * @throws IllegalArgumentException where a value is out of its bounds
     */
    public static BipolarLaw of(
            Polarity polarity,
            double saturationAmps,
            double forwardGain,
            double reverseGain,
            double earlyVolts,
            double collectorFarads,
            double breakdownVolts) {
        if (!(forwardGain > 0 && reverseGain > 0 && earlyVolts > 0)) {
            throw new IllegalArgumentException("current gains " + forwardGain + " and " + reverseGain
                    + " and Early voltage " + earlyVolts + " V must be above 0");
        }
        if (!(collectorFarads >= 0 && collectorFarads < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("collector capacitance of " + collectorFarads + " F");
        }
        Breakdown breakdown = Double.isInfinite(breakdownVolts)
                ? Breakdown.NONE
                : new Breakdown(breakdownVolts, BREAKDOWN_AMPS, breakdownVolts * BREAKDOWN_OHMS_PER_VOLT);
        Exponential transport = new Exponential(saturationAmps, 1);
        return new BipolarLaw(
                polarity, new Ebers(transport, forwardGain, reverseGain, 1 / earlyVolts), collectorFarads, breakdown);
    }

    double sign() {
        return sign;
    }

    Ebers ebers() {
        return ebers;
    }

    Breakdown breakdown() {
        return breakdown;
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
        return port == 1 ? collectorFarads : 0;
    }

    @Override
    public void evaluate(PortPoint at) {
        double be = sign * at.volts[0];
        double bc = sign * at.volts[1];
        double forward = ebers.forward(be);
        double forwardSlope = ebers.slope(forward);
        double reverse = ebers.forward(bc);
        double reverseSlope = ebers.slope(reverse);
        double widening = ebers.widening(bc);
        double through = (forward - reverse) * widening;
        double throughByBe = forwardSlope * widening;
        double throughByBc = -reverseSlope * widening - ebers.wideningSlope(bc) * (forward - reverse);
        double across = 0;
        double acrossSlope = 0;
        double ce = be - bc;
        if (!breakdown.isOff(ce)) {
            double e = breakdown.exponential(ce);
            across = breakdown.amps(ce, e);
            acrossSlope = breakdown.siemens(e);
        }
        at.amps[0] = sign * (forward / ebers.forwardGain() + through + across);
        at.amps[1] = sign * (reverse / ebers.reverseGain() - through - across);
        at.siemens[0] = forwardSlope / ebers.forwardGain() + throughByBe + acrossSlope;
        at.siemens[1] = throughByBc - acrossSlope;
        at.siemens[2] = -throughByBe - acrossSlope;
        at.siemens[3] = reverseSlope / ebers.reverseGain() - throughByBc + acrossSlope;
    }

    @Override
    public double reachVolts(PortPoint at, int port) {
        double be = sign * at.volts[0];
        double bc = sign * at.volts[1];
        double own = ebers.reachVolts(port == 0 ? be : bc);
        // two ports may move at once
        return Math.min(own, breakdown.reachVolts(be - bc)) / 2;
    }

    @Override
    public double limited(int port, double proposedVolts, double presentVolts) {
        return sign * ebers.limited(sign * proposedVolts, sign * presentVolts);
    }
}
