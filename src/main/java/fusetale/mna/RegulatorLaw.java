package fusetale.mna;

/**
 * A three-terminal series regulator: port 0 from input to output, port 1 from output to ground. The pass current is the
 * least of what the error amplifier asks for, what the pass transistor lets through and the current limit:
 *
 * <pre>
 * asked   = (VO + (vin − VR)/rejection − vout)/RO       VR = VO + dropout + 3 V, where sheets state the output
 * passed  = (vin − vout − 0.8·dropout)/RD               RD so that the limit current flows at dropout
 * </pre>
 *
 * and never below 0, with the corners between these pieces rounded. Into the ground pin flows the quiescent current, a tenth
 * of it through the divider that senses the output; it rises between 1.2 V (two junctions) and 3 V of input and is constant
 * above. Where the output stands above the input, a diode to the input conducts. Behaviour as the data sheets of the 5 V
 * types describe it; the pieces are ours. Thermal shut-down is not part of it.
 */
public final class RegulatorLaw implements PortLaw {
    private static final double LIGHT_LOAD_DROPOUT_RATIO = 0.8;
    private static final double STATED_ABOVE_DROPOUT_VOLTS = 3;
    private static final double DIVIDER_RATIO = 0.1;
    private static final double QUIESCENT_FROM_VOLTS = 1.2;
    private static final double QUIESCENT_SPAN_VOLTS = 1.8;
    /** Saturation current [A] and ideality of the path from output back to input: 0.75 V at 1 A. */
    private static final double BACK_SATURATION_AMPS = 3.5e-9;

    private static final double BACK_IDEALITY = 1.5;

    private final double outputVolts;
    private final double statedInputVolts;
    private final double perRejection;
    private final double outputOhms;
    private final double passFromVolts;
    private final double passOhms;
    private final double limitAmps;
    private final double quiescentAmps;
    private final double dividerSiemens;
    private final SoftCorner between;
    private final SoftCorner off;
    private final Exponential back;

    /**
     * A regulator.
     *
     * @param outputVolts regulated voltage VO [V], above 0
     * @param outputOhms differential output resistance RO [ohm], above 0
     * @param dropoutVolts what the input must exceed the output by at the limit current [V], above 0
     * @param quiescentAmps current into the ground pin [A], 0 or more
     * @param limitAmps current limit [A], above 0
     * @param rejectionRatio input ripple over output ripple, above 1; infinite for perfect
     * @throws IllegalArgumentException where a value is out of its bounds
     */
    public RegulatorLaw(
            double outputVolts,
            double outputOhms,
            double dropoutVolts,
            double quiescentAmps,
            double limitAmps,
            double rejectionRatio) {
        positive("output voltage", outputVolts);
        positive("output resistance", outputOhms);
        positive("dropout voltage", dropoutVolts);
        positive("current limit", limitAmps);
        if (!(quiescentAmps >= 0 && quiescentAmps < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("regulator quiescent current of " + quiescentAmps + " A");
        }
        if (!(rejectionRatio > 1)) {
            throw new IllegalArgumentException(
                    "regulator ripple rejection of " + rejectionRatio + "; as a ratio it must be above 1");
        }
        this.outputVolts = outputVolts;
        this.statedInputVolts = outputVolts + dropoutVolts + STATED_ABOVE_DROPOUT_VOLTS;
        this.perRejection = 1 / rejectionRatio;
        this.outputOhms = outputOhms;
        this.passFromVolts = LIGHT_LOAD_DROPOUT_RATIO * dropoutVolts;
        this.passOhms = (1 - LIGHT_LOAD_DROPOUT_RATIO) * dropoutVolts / limitAmps;
        this.limitAmps = limitAmps;
        this.quiescentAmps = (1 - DIVIDER_RATIO) * quiescentAmps;
        this.dividerSiemens = DIVIDER_RATIO * quiescentAmps / outputVolts;
        this.between = new SoftCorner(0.02 * limitAmps);
        this.off = new SoftCorner(1e-4 * limitAmps);
        this.back = new Exponential(BACK_SATURATION_AMPS, BACK_IDEALITY);
    }

    private static void positive(String what, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("regulator " + what + " of " + value + "; it must be above 0");
        }
    }

    @Override
    public int ports() {
        return 2;
    }

    @Override
    public double baselineSiemens(int port) {
        return port == 1 ? dividerSiemens : 0;
    }

    @Override
    public void evaluate(PortPoint at) {
        double across = at.volts[0];
        double out = at.volts[1];
        double in = across + out;
        double asked = (outputVolts + (in - statedInputVolts) * perRejection - out) / outputOhms;
        double askedByOut = (perRejection - 1) / outputOhms;
        double askedByAcross = perRejection / outputOhms;
        double passed = (across - passFromVolts) / passOhms;
        // least of asked and passed, then of that and the limit, then not below 0; slopes by the chain rule
        double passedExcess = passed - asked;
        double share = between.slope(passedExcess);
        double least = passed - between.above(passedExcess);
        double limitExcess = limitAmps - least;
        double belowLimit = between.slope(limitExcess);
        double limited = limitAmps - between.above(limitExcess);
        double on = off.slope(limited) * belowLimit;
        double pass = off.above(limited);
        double passByAcross = on * ((1 - share) / passOhms + share * askedByAcross);
        double passByOut = on * share * askedByOut;
        double reverse = back.amps(-across);
        pass -= reverse;
        passByAcross += back.siemens(reverse);
        double x = Math.max(0, Math.min(1, (in - QUIESCENT_FROM_VOLTS) / QUIESCENT_SPAN_VOLTS));
        double rest = quiescentAmps * x * x * (3 - 2 * x);
        double restByIn = quiescentAmps * 6 * x * (1 - x) / QUIESCENT_SPAN_VOLTS;
        at.amps[0] = pass + rest;
        at.amps[1] = rest;
        at.siemens[0] = passByAcross + restByIn;
        at.siemens[1] = passByOut + restByIn;
        at.siemens[2] = restByIn;
        at.siemens[3] = restByIn;
    }

    /** In regulation the law is straight as far as the nearest corner; elsewhere it does not say. */
    @Override
    public double reachVolts(PortPoint at, int port) {
        double across = at.volts[0];
        double in = across + at.volts[1];
        double asked = (outputVolts + (in - statedInputVolts) * perRejection - at.volts[1]) / outputOhms;
        double passed = (across - passFromVolts) / passOhms;
        double toEdge = Math.min(asked - off.width(), limitAmps - between.width() - asked);
        double toCorner = Math.min(toEdge, passed - between.width() - asked);
        double toRest = Math.min(across, in - QUIESCENT_FROM_VOLTS - QUIESCENT_SPAN_VOLTS);
        // both ports may move at once
        double amps = toCorner / (2 / outputOhms + 2 / passOhms);
        return Math.max(0, Math.min(amps, toRest / 2));
    }

    /** The stretch in which the output answers to its voltage moves with the input. */
    @Override
    public void limit(double[] present, double[] proposed) {
        double across = proposed[0];
        if (across < present[0] && across < 0) {
            proposed[0] = -back.limited(-across, -present[0]);
        } else {
            proposed[0] = stopped(passFromVolts, passFromVolts + passOhms * limitAmps, across, present[0]);
        }
        double in = proposed[0] + proposed[1];
        double high = outputVolts + (in - statedInputVolts) * perRejection;
        proposed[1] = stopped(high - outputOhms * limitAmps, high, proposed[1], present[1]);
    }

    /**
     * Stops a step that would jump over the stretch where the current answers to the voltage: on both sides of it the
     * current is constant, and Newton would jump to and fro for ever.
     */
    private static double stopped(double low, double high, double proposed, double present) {
        boolean up = present <= low && proposed >= high;
        boolean down = present >= high && proposed <= low;
        return up || down ? (low + high) / 2 : proposed;
    }
}
