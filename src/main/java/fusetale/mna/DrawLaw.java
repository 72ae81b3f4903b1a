package fusetale.mna;

/**
 * A board of logic seen as a load, port from supply to ground. Below 0.3 of its rated voltage only its leakage flows (1 % of
 * the rated current at rated voltage); from there to 0.8 of the rated voltage the current rises on a smooth step
 * 3x² − 2x³, and stays constant above. Common practice: bipolar logic needs two junction drops before it draws, and its
 * supply current hardly changes around its rated voltage.
 */
public final class DrawLaw implements PortLaw {
    private static final double STARTS_RATIO = 0.3;
    private static final double FULL_RATIO = 0.8;
    private static final double LEAKAGE_RATIO = 0.01;

    private final double startVolts;
    private final double spanVolts;
    private final double steppedAmps;
    private final double leakageSiemens;

    /**
     * A load.
     *
     * @param ratedVolts rated voltage [V], above 0
     * @param ratedAmps current [A] there, above 0
     * @throws IllegalArgumentException where a value is not above 0 and finite
     */
    public DrawLaw(double ratedVolts, double ratedAmps) {
        if (!(ratedVolts > 0 && ratedAmps > 0 && ratedVolts + ratedAmps < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a load of " + ratedAmps + " A at " + ratedVolts + " V; both must be above 0");
        }
        this.startVolts = STARTS_RATIO * ratedVolts;
        this.spanVolts = (FULL_RATIO - STARTS_RATIO) * ratedVolts;
        this.leakageSiemens = LEAKAGE_RATIO * ratedAmps / ratedVolts;
        this.steppedAmps = (1 - LEAKAGE_RATIO) * ratedAmps;
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
    public void evaluate(PortPoint at) {
        double x = (at.volts[0] - startVolts) / spanVolts;
        if (x <= 0 || x >= 1) {
            at.amps[0] = x <= 0 ? 0 : steppedAmps;
            at.siemens[0] = 0;
            return;
        }
        at.amps[0] = steppedAmps * x * x * (3 - 2 * x);
        at.siemens[0] = steppedAmps * 6 * x * (1 - x) / spanVolts;
    }

    @Override
    public double reachVolts(PortPoint at, int port) {
        double above = at.volts[0] - startVolts;
        if (above <= 0) {
            return -above;
        }
        // in between, the slope's own slope is at most six times the stepped current over the span squared
        return above >= spanVolts ? above - spanVolts : at.siemens[0] * spanVolts * spanVolts / (6 * steppedAmps);
    }

    @Override
    public double limited(int port, double proposedVolts, double presentVolts) {
        // from one flat stretch to the other: stop half-way, or Newton jumps to and fro between them
        double half = startVolts + spanVolts / 2;
        double full = startVolts + spanVolts;
        boolean up = presentVolts <= startVolts && proposedVolts >= full;
        boolean down = presentVolts >= full && proposedVolts <= startVolts;
        return up || down ? half : proposedVolts;
    }
}
