package fusetale.mna;

/**
 * A nonlinear, time-dependent or dynamic element as the linear network sees it: through one or more ports, currents a
 * function of port voltages, i = f(v). Current flows from the port's first node through the element to the second.
 *
 * <p>What {@link #evaluate} returns comes on top of two linear pieces the network carries for the law: {@link
 * #baselineSiemens} across each port (a law that is nearly linear puts its usual conductance there and returns only the
 * deviation: ports whose deviation has no slope cost nothing to solve) and {@link #farads} across each port.
 *
 * <p>Laws are immutable; what changes lives in the {@link PortPoint} of one solver.
 */
public interface PortLaw {
    /** A slope [S] below this is none: exp(−40) of a junction's at an ampere. */
    double NO_SIEMENS = 1e-15;

    /** A step along the tangent may be this part of a law's reach. */
    double STRAIGHT = 0.01;

    /** Number of ports, 1 or more. */
    int ports();

    /** Number of own states (a temperature, say) that follow dw/dt = g(v, w); usually none. */
    default int states() {
        return 0;
    }

    /** State {@code state} at rest, where nothing is known better. */
    default double restingState(int state) {
        return 0;
    }

    /** State {@code state} at rest of a device that was switched on and may stay on by itself; {@link #restingState} of all others. */
    default double switchedOnState(int state) {
        return restingState(state);
    }

    /** Below this state {@code state} cannot be in a machine that repeats; a search need not look there. */
    default double leastState(int state) {
        return Double.NEGATIVE_INFINITY;
    }

    /**
     * About where state {@code state} settles under a voltage that repeats much faster than it moves; NaN where that says
     * nothing. A guess to start from.
     *
     * @param rmsVolts of each port [V]. Not modified.
     */
    default double settledState(int state, double[] rmsVolts) {
        return Double.NaN;
    }

    /** Linear conductance [S] across a port, stamped into the network beside this law; 0 or more. */
    default double baselineSiemens(int port) {
        return 0;
    }

    /** Linear capacitance [F] across a port, stamped into the network beside this law; 0 or more. */
    default double farads(int port) {
        return 0;
    }

    /**
     * The same law with its {@link #baselineSiemens} chosen so that it deviates little while its states stay near {@code
     * states}; itself where there is nothing to choose. Only speed depends on it.
     *
     * @param states own states of a neighbour's solution. Not modified.
     */
    default PortLaw near(double[] states) {
        return this;
    }

    /**
     * The same law with its {@link #baselineSiemens} at this value [S]; itself where it cannot be chosen. Neighbours whose
     * baselines are the same share what was worked out for the linear part.
     */
    default PortLaw withBaseline(double siemens) {
        return this;
    }

    /**
     * Currents and slopes at the voltages of {@code at}.
     *
     * @param at volts, start, seconds and stepSeconds are read; everything else is written. Modified.
     */
    void evaluate(PortPoint at);

    /**
     * Limits one Newton step of a port voltage, as junctions need it.
     *
     * @param port which port
     * @param proposedVolts where Newton wants to go
     * @param presentVolts where it is
     * @return where to go, between the two
     */
    default double limited(int port, double proposedVolts, double presentVolts) {
        return proposedVolts;
    }

    /**
     * Limits one Newton step of all ports at once; by default each for itself. A law whose ports belong together overrides
     * it.
     *
     * @param present where the ports are [V]. Not modified.
     * @param proposed where Newton wants to go [V], then where to go. Modified.
     */
    default void limit(double[] present, double[] proposed) {
        for (int k = 0; k < ports(); k++) {
            proposed[k] = limited(k, proposed[k], present[k]);
        }
    }

    /**
     * How far [V] the voltage of a port may move from where {@code at} was evaluated while no slope grows to more than twice
     * the largest there or {@link #NO_SIEMENS}, the other ports moving as far as theirs may; 0 where the law does not say. Only speed depends on
     * it: a current that cannot have changed is not worked out again, and a short step goes along the tangent.
     *
     * @param at an evaluated point. Not modified.
     */
    default double reachVolts(PortPoint at, int port) {
        return 0;
    }

    /**
     * How far [V] the voltage of a port may be from where {@code at} was evaluated for the tangents there to give currents and states to
     * less than a solver minds: by default a hundredth of {@link #reachVolts}.
     *
     * @param at an evaluated point. Not modified.
     * @param reachVolts what {@link #reachVolts} says there
     */
    default double straightVolts(PortPoint at, int port, double reachVolts) {
        return STRAIGHT * reachVolts;
    }

    /**
     * The same of a state before the stage, as a ratio of itself; 0 where the law does not say.
     *
     * @param at an evaluated point. Not modified.
     */
    default double straightRatio(PortPoint at, int state) {
        return 0;
    }

    /** Times [s] at which the law changes abruptly, within one period or one run; steps land on them. */
    default double[] corners() {
        return new double[0];
    }
}
