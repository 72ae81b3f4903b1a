package fusetale.mna;

/**
 * Two transistors as a Darlington with the diode across its output, without bulk resistances: port 0 from base to middle
 * (the emitter of the first, the base of the second), port 1 from middle to emitter, port 2 from middle to collector. Each
 * transistor obeys the equations of {@link BipolarLaw}; the collector junction of the first sees the sum of ports 0 and 2,
 * the diode the difference of ports 2 and 1. Three ports instead of the five of its parts; base-emitter resistors stay
 * outside.
 */
public final class DarlingtonLaw implements PortLaw {
    private final double sign;
    private final Ebers first;
    private final Ebers second;
    private final Exponential across;
    private final Breakdown breakdown;
    private final double collectorFarads;

    /**
     * A Darlington.
     *
     * @param first the transistor whose base is brought out; its breakdown is not used
     * @param second the output transistor
     * @param acrossSaturationAmps IS of the diode across the output [A], above 0
     * @param acrossIdealityRatio N of that diode, above 0
     * @throws IllegalArgumentException where the two are of different polarity or the diode's values out of bounds
     */
    public DarlingtonLaw(BipolarLaw first, BipolarLaw second, double acrossSaturationAmps, double acrossIdealityRatio) {
        if (first.sign() != second.sign()) {
            throw new IllegalArgumentException(
                    "a Darlington of an NPN and a PNP transistor; both must be of one polarity");
        }
        this.sign = first.sign();
        this.first = first.ebers();
        this.second = second.ebers();
        this.across = new Exponential(acrossSaturationAmps, acrossIdealityRatio);
        this.breakdown = second.breakdown();
        this.collectorFarads = second.farads(1);
    }

    @Override
    public int ports() {
        return 3;
    }

    @Override
    public double baselineSiemens(int port) {
        return BipolarLaw.LEAKAGE_SIEMENS;
    }

    @Override
    public double farads(int port) {
        return port == 2 ? collectorFarads : 0;
    }

    @Override
    public void evaluate(PortPoint at) {
        double bm = sign * at.volts[0];
        double me = sign * at.volts[1];
        double mc = sign * at.volts[2];
        double ce = me - mc;
        double[] i = at.amps;
        double[] g = at.siemens;
        // second transistor between ports 1 and 2
        double f = second.forward(me);
        double fs = second.slope(f);
        double r = second.forward(mc);
        double rs = second.slope(r);
        double widening = second.widening(mc);
        double through = (f - r) * widening;
        double throughByMe = fs * widening;
        double throughByMc = -rs * widening - second.wideningSlope(mc) * (f - r);
        // across the output: breakdown, and the diode the other way round
        double output = 0;
        double outputSlope = 0;
        if (!breakdown.isOff(ce)) {
            double e = breakdown.exponential(ce);
            output = breakdown.amps(ce, e);
            outputSlope = breakdown.siemens(e);
        }
        double damper = across.amps(-ce);
        output -= damper;
        outputSlope += across.siemens(damper);
        i[1] = f / second.forwardGain() + through + output;
        i[2] = r / second.reverseGain() - through - output;
        g[4] = fs / second.forwardGain() + throughByMe + outputSlope;
        g[5] = throughByMc - outputSlope;
        g[7] = -throughByMe - outputSlope;
        g[8] = rs / second.reverseGain() - throughByMc + outputSlope;
        g[1] = 0;
        g[2] = 0;
        g[3] = 0;
        g[6] = 0;
        addFirst(bm, mc, i, g);
        i[0] *= sign;
        i[1] *= sign;
        i[2] *= sign;
    }

    /** The first transistor: base-emitter is port 0; the current of its collector junction flows base to middle to collector. */
    private void addFirst(double bm, double mc, double[] i, double[] g) {
        double bc = bm + mc;
        double f = first.forward(bm);
        double fs = first.slope(f);
        double r = first.forward(bc);
        double rs = first.slope(r);
        double widening = first.widening(bc);
        double through = (f - r) * widening;
        double throughByBm = fs * widening;
        double throughByBc = -rs * widening - first.wideningSlope(bc) * (f - r);
        double collector = r / first.reverseGain() - through;
        double collectorByBc = rs / first.reverseGain() - throughByBc;
        double base = f / first.forwardGain() + through;
        i[0] = base + collector;
        i[2] += collector;
        g[0] = fs / first.forwardGain() + throughByBm + throughByBc + collectorByBc - throughByBm;
        g[2] += throughByBc + collectorByBc;
        g[6] += collectorByBc - throughByBm;
        g[8] += collectorByBc;
    }

    @Override
    public double reachVolts(PortPoint at, int port) {
        double bm = sign * at.volts[0];
        double me = sign * at.volts[1];
        double mc = sign * at.volts[2];
        double reach;
        if (port == 0) {
            reach = Math.min(first.reachVolts(bm), first.reachVolts(bm + mc));
        } else {
            reach = Math.min(second.reachVolts(port == 1 ? me : mc), across.reachVolts(mc - me));
            reach = Math.min(reach, breakdown.reachVolts(me - mc));
            reach = port == 1 ? reach : Math.min(reach, first.reachVolts(bm + mc));
        }
        // two ports may move at once
        return reach / 2;
    }

    @Override
    public double limited(int port, double proposedVolts, double presentVolts) {
        Ebers junction = port == 0 ? first : second;
        double limited = sign * junction.limited(sign * proposedVolts, sign * presentVolts);
        return limited;
    }
}
