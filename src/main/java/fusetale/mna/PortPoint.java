package fusetale.mna;

/**
 * Where a {@link PortLaw} is evaluated and what came out. One object a law and solver, reused so that stepping allocates
 * nothing; not for sharing between threads.
 */
public final class PortPoint {
    /** Read: port voltages [V]. */
    public final double[] volts;
    /** Read: time [s]. */
    public double seconds;
    /**
     * Read: γh of the implicit stage [s], in which a state obeys w = start + stepSeconds·g(v, w); {@link
     * Double#POSITIVE_INFINITY} asks for the steady state g(v, w) = 0.
     */
    public double stepSeconds;
    /** Read: predicted states before the stage. In the steady state a guess. */
    public final double[] start;
    /** Room for a step of Newton's: where the ports are, and where they go [V]. */
    final double[] present;

    final double[] proposed;
    /** Written: port currents [A]. */
    public final double[] amps;
    /** Written: d amps / d volts [S], row-major ports × ports, total (through the states too). */
    public final double[] siemens;
    /** Written: states after the stage. */
    public final double[] end;
    /** Written: d end / d volts, row-major states × ports. */
    public final double[] endByVolts;
    /** Written: d end / d start, row-major states × states; 0 in the steady state. */
    public final double[] endByStart;
    /** Written: d amps / d start, row-major ports × states; 0 in the steady state. */
    public final double[] ampsByStart;

    /** A point with room for the law. */
    public PortPoint(int ports, int states) {
        volts = new double[ports];
        start = new double[states];
        present = new double[ports];
        proposed = new double[ports];
        amps = new double[ports];
        siemens = new double[ports * ports];
        end = new double[states];
        endByVolts = new double[states * ports];
        endByStart = new double[states * states];
        ampsByStart = new double[ports * states];
    }
}
