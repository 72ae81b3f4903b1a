package fusetale.mna;

/**
 * Keeps a node between two voltages: nothing flows between them, beyond them a steep conductance, with a corner rounded over
 * 20 mV. What drives the node with less than 0.1 A gets it no further than 30 mV past either limit. The piecewise straight
 * limiter of textbooks on amplifier models; corner and slope are ours.
 */
public final class SwingLaw implements PortLaw {
    private static final double SIEMENS = 10;
    /** Rounding must not carry a reach past a limit. */
    private static final double NEARLY = 0.999;

    private static final SoftCorner CORNER = new SoftCorner(0.01);

    private final double lowVolts;
    private final double highVolts;

    /**
     * A limiter.
     *
     * @param lowVolts lowest voltage that is left alone [V]
     * @param highVolts highest voltage that is left alone [V]
     * @throws IllegalArgumentException where the limits are none or in the wrong order
     */
    public SwingLaw(double lowVolts, double highVolts) {
        if (!(lowVolts < highVolts && Double.NEGATIVE_INFINITY < lowVolts && highVolts < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("output from " + lowVolts + " V to " + highVolts
                    + " V; the rails must leave room between the lower and the higher limit");
        }
        this.lowVolts = lowVolts;
        this.highVolts = highVolts;
    }

    @Override
    public int ports() {
        return 1;
    }

    @Override
    public void evaluate(PortPoint at) {
        double above = at.volts[0] - highVolts - CORNER.width();
        double below = lowVolts - CORNER.width() - at.volts[0];
        at.amps[0] = SIEMENS * (CORNER.above(above) - CORNER.above(below));
        at.siemens[0] = SIEMENS * (CORNER.slope(above) + CORNER.slope(below));
    }

    /** Between its limits it does nothing as far as the nearer one; beyond them it does not say. */
    @Override
    public double reachVolts(PortPoint at, int port) {
        return NEARLY * Math.max(0, Math.min(highVolts - at.volts[0], at.volts[0] - lowVolts));
    }
}
