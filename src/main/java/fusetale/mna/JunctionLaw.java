package fusetale.mna;

/**
 * A p-n junction, port from anode to cathode: forward i = IS·(exp(v/(N·VT)) − 1) at 25 °C, reverse breakdown as a second
 * exponential running into a resistance, leakage and junction capacitance as linear pieces beside it. A series resistance
 * is not part of it; put a resistor before it.
 */
public final class JunctionLaw implements PortLaw {
    private final Exponential forward;
    private final Breakdown breakdown;
    private final double farads;
    private final double leakageSiemens;

    private JunctionLaw(Exponential forward, Breakdown breakdown, double farads, double leakageSiemens) {
        this.forward = forward;
        this.breakdown = breakdown;
        this.farads = farads;
        this.leakageSiemens = leakageSiemens;
    }

    /**
     * A junction that never breaks down, without leakage or capacitance.
     *
     * @param saturationAmps IS [A], above 0
     * @param idealityRatio N, above 0
     * @throws IllegalArgumentException where a value is not above 0 and finite
     */
    public static JunctionLaw of(double saturationAmps, double idealityRatio) {
        return new JunctionLaw(new Exponential(saturationAmps, idealityRatio), Breakdown.NONE, 0, 0);
    }

    /**
     * The same junction with a reverse breakdown.
     *
     * @param volts reverse voltage [V] at {@code amps}, above 0; infinite for none
     * @param amps current [A] there, above 0
     * @param ohms differential resistance [ohm] well above the knee, above 0
     * @throws IllegalArgumentException where a value is not above 0
     */
    public JunctionLaw withBreakdown(double volts, double amps, double ohms) {
        Breakdown other = Double.isInfinite(volts) ? Breakdown.NONE : new Breakdown(volts, amps, ohms);
        return new JunctionLaw(forward, other, farads, leakageSiemens);
    }

    /**
     * The same junction with a capacitance [F] and a leakage conductance [S] across it.
     *
     * @throws IllegalArgumentException where a value is negative or not finite
     */
    public JunctionLaw withLinear(double newFarads, double newLeakageSiemens) {
        if (!(newFarads >= 0 && newFarads < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("junction capacitance of " + newFarads + " F");
        }
        if (!(newLeakageSiemens >= 0 && newLeakageSiemens < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("junction leakage of " + newLeakageSiemens + " S");
        }
        return new JunctionLaw(forward, breakdown, newFarads, newLeakageSiemens);
    }

    @Override
    public int ports() {
        return 1;
    }

    @Override
    public double baselineSiemens(int port) {
        return leakageSiemens;
    }

    @Override
    public double farads(int port) {
        return farads;
    }

    @Override
    public void evaluate(PortPoint at) {
        double v = at.volts[0];
        double i = forward.amps(v);
        double g = forward.siemens(i);
        if (!breakdown.isOff(-v)) {
            double e = breakdown.exponential(-v);
            i -= breakdown.amps(-v, e);
            g += breakdown.siemens(e);
        }
        at.amps[0] = i;
        at.siemens[0] = g;
    }

    @Override
    public double reachVolts(PortPoint at, int port) {
        double v = at.volts[0];
        return Math.min(forward.reachVolts(v), breakdown.reachVolts(-v));
    }

    @Override
    public double limited(int port, double proposedVolts, double presentVolts) {
        if (proposedVolts > presentVolts) {
            return forward.limited(proposedVolts, presentVolts);
        }
        return -breakdown.limited(-proposedVolts, -presentVolts);
    }
}
