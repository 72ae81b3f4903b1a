package fusetale.mna;

/**
 * An enhancement MOSFET with its body diode, without bulk resistances: port 0 from gate to source, port 1 from drain to
 * source. The square law of H. Shichman and D. A. Hodges ("Modeling and simulation of insulated-gate field-effect
 * transistor switching circuits", IEEE Journal of Solid-State Circuits SC-3(3), 1968), with u = vgs − VT:
 *
 * <pre>
 * u ≤ 0          i = 0                                     cut-off
 * 0 < vds < u    i = K·(2·u·vds − vds²)·(1 + vds/VA)       triode
 * vds ≥ u        i = K·u²·(1 + vds/VA)                     saturation
 * </pre>
 *
 * K in A/V². With the drain below the source the two change places. Value and slope are continuous everywhere. The body
 * diode conducts from source to drain and breaks down at the stated drain voltage, running into a resistance of a
 * twentieth of it per ampere (ours: it only has to end the blocking). A P-channel transistor is the same with all voltages
 * and currents turned round.
 */
public final class MosfetLaw implements PortLaw {
    /** Which channel. */
    public enum Channel {
        /** Drain current flows in, a positive gate turns on. */
        N(1),
        /** Drain current flows out, a negative gate turns on. */
        P(-1);

        private final double sign;

        Channel(double sign) {
            this.sign = sign;
        }
    }

    /** Current [A] at which breakdown is stated, within the 10 μA to 1 mA of data sheets. */
    private static final double BREAKDOWN_AMPS = 250e-6;

    private static final double BREAKDOWN_OHMS_PER_VOLT = 1.0 / 20;
    /** Drain to source, so that nothing floats [S]: data sheets allow some μA, cool parts show nanoamperes. */
    private static final double LEAKAGE_SIEMENS = 1e-11;
    /** Ideality of the body diode, common practice. */
    private static final double BODY_IDEALITY = 1.2;

    private final double sign;
    private final double thresholdVolts;
    private final double ampsPerSquareVolt;
    private final double perEarlyVolt;
    private final Exponential body;
    private final Breakdown breakdown;
    private final double gateSiemens;
    private final double gateFarads;
    private final double drainFarads;

    private MosfetLaw(MosfetLaw of, double gateOhms, double gateFarads, double drainFarads) {
        this.sign = of.sign;
        this.thresholdVolts = of.thresholdVolts;
        this.ampsPerSquareVolt = of.ampsPerSquareVolt;
        this.perEarlyVolt = of.perEarlyVolt;
        this.body = of.body;
        this.breakdown = of.breakdown;
        this.gateSiemens = 1 / gateOhms;
        this.gateFarads = gateFarads;
        this.drainFarads = drainFarads;
    }

    /**
     * A transistor without gate leakage or capacitances.
     *
     * @param channel N or P
     * @param thresholdVolts VT [V], above 0 for both channels
     * @param ampsPerSquareVolt K [A/V²], above 0
     * @param earlyVolts VA [V], the inverse of the slope in saturation, above 0; infinite for none
     * @param bodySaturationAmps IS of the body diode [A], above 0
     * @param breakdownVolts drain-source breakdown [V] at 250 μA, above 0; infinite for none
     * @throws IllegalArgumentException where a value is out of its bounds
     */
    public MosfetLaw(
            Channel channel,
            double thresholdVolts,
            double ampsPerSquareVolt,
            double earlyVolts,
            double bodySaturationAmps,
            double breakdownVolts) {
        if (!(thresholdVolts > 0 && ampsPerSquareVolt > 0 && earlyVolts > 0)
                || Double.isInfinite(thresholdVolts + ampsPerSquareVolt)) {
            throw new IllegalArgumentException("a MOSFET with a threshold of " + thresholdVolts + " V, "
                    + ampsPerSquareVolt + " A/V² and an Early voltage of " + earlyVolts
                    + " V; all must be above 0, a P channel's too");
        }
        this.sign = channel.sign;
        this.thresholdVolts = thresholdVolts;
        this.ampsPerSquareVolt = ampsPerSquareVolt;
        this.perEarlyVolt = 1 / earlyVolts;
        this.body = new Exponential(bodySaturationAmps, BODY_IDEALITY);
        this.breakdown = Double.isInfinite(breakdownVolts)
                ? Breakdown.NONE
                : new Breakdown(breakdownVolts, BREAKDOWN_AMPS, breakdownVolts * BREAKDOWN_OHMS_PER_VOLT);
        this.gateSiemens = 0;
        this.gateFarads = 0;
        this.drainFarads = 0;
    }

    /**
     * The same transistor with what lies beside its ports.
     *
     * @param gateOhms gate leakage [ohm], above 0
     * @param newGateFarads gate-source capacitance [F], 0 or more
     * @param newDrainFarads drain-source capacitance [F], 0 or more
     * @throws IllegalArgumentException where a value is out of its bounds
     */
    public MosfetLaw withLinear(double gateOhms, double newGateFarads, double newDrainFarads) {
        if (!(gateOhms > 0 && newGateFarads >= 0 && newDrainFarads >= 0)
                || Double.isInfinite(newGateFarads + newDrainFarads)) {
            throw new IllegalArgumentException("a MOSFET with a gate leakage of " + gateOhms + " ohm, " + newGateFarads
                    + " F at the gate and " + newDrainFarads + " F at the drain");
        }
        return new MosfetLaw(this, gateOhms, newGateFarads, newDrainFarads);
    }

    @Override
    public int ports() {
        return 2;
    }

    @Override
    public double baselineSiemens(int port) {
        return port == 0 ? gateSiemens : LEAKAGE_SIEMENS;
    }

    @Override
    public double farads(int port) {
        return port == 0 ? gateFarads : drainFarads;
    }

    @Override
    public void evaluate(PortPoint at) {
        double gs = sign * at.volts[0];
        double ds = sign * at.volts[1];
        at.amps[0] = 0;
        at.siemens[0] = 0;
        at.siemens[1] = 0;
        // drain and source change places where the drain is the lower
        boolean turned = ds < 0;
        double across = Math.abs(ds);
        double above = (turned ? gs - ds : gs) - thresholdVolts;
        double i = 0;
        double byGate = 0;
        double byAcross = 0;
        if (above > 0) {
            double widening = 1 + across * perEarlyVolt;
            double filled = Math.min(across, above);
            double square = ampsPerSquareVolt * filled * (2 * above - filled);
            i = square * widening;
            byGate = 2 * ampsPerSquareVolt * filled * widening;
            byAcross = 2 * ampsPerSquareVolt * (above - filled) * widening + square * perEarlyVolt;
        }
        double drain = turned ? -i : i;
        double byDrain = turned ? byGate + byAcross : byAcross;
        double bodyAmps = body.amps(-ds);
        drain -= bodyAmps;
        byDrain += body.siemens(bodyAmps);
        if (!breakdown.isOff(ds)) {
            double e = breakdown.exponential(ds);
            drain += breakdown.amps(ds, e);
            byDrain += breakdown.siemens(e);
        }
        at.amps[1] = sign * drain;
        at.siemens[2] = turned ? -byGate : byGate;
        at.siemens[3] = byDrain;
    }

    @Override
    public double limited(int port, double proposedVolts, double presentVolts) {
        if (port == 0) {
            return proposedVolts;
        }
        double proposed = sign * proposedVolts;
        double present = sign * presentVolts;
        // from saturation, where the current hardly answers, Newton aims far below: stop where it answers most
        if (present > 0 && proposed < 0) {
            return 0;
        }
        if (proposed < present) {
            return -sign * body.limited(-proposed, -present);
        }
        return sign * breakdown.limited(proposed, present);
    }
}
