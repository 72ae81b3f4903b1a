package fusetale.mna;

import java.util.Arrays;

/**
 * How a state that repeats goes with the voltage of all alternating sources, to the second order: x(1 + r) = x(1) + slope·r + bend·r².
 * A lamp's temperature, or a rail behind a rectifier, leaves the straight line within a volt of mains by more than a cycle may miss by.
 * Immutable.
 */
final class AlongMains {
    /** What the sources are raised by to find the bend: its square is far above what the state itself misses by. */
    private static final double RAISED = 0.03;
    /** A bend of more than this ratio of full scale within that is something else: a relay that pulls in. */
    private static final double MOST_BENT = 0.01;

    /** Of the carried states. */
    final Curve carried;
    /** Of the other linear states behind the slow ones, which follow within a cycle. */
    private final Curve fast;

    /** Slope and bend of some states, per unit of what the sources are raised by. Its arrays are never written again. */
    static final class Curve {
        final double[] slope;
        final double[] bend;

        Curve(double[] slope, double[] bend) {
            this.slope = slope;
            this.bend = bend;
        }

        double[] step(double raisedBy) {
            double[] step = new double[slope.length];
            for (int k = 0; k < step.length; k++) {
                step[k] = raisedBy * (slope[k] + raisedBy * bend[k]);
            }
            return step;
        }
    }

    private AlongMains(Curve carried, Curve fast) {
        this.carried = carried;
        this.fast = fast;
    }

    /**
     * Of the state from which the last cycle was taken, with its sensitivities. One cycle more is taken; afterwards the stepper and
     * the start of the map are somewhere else.
     *
     * @param inverse of that cycle
     */
    static AlongMains of(PeriodMap map, Mesh mesh, PeriodInverse inverse) {
        Stepper stepper = map.stepper;
        double[] missed = map.residual();
        double[] slope = inverse.times(stepper.bySources());
        double[] fastSlope = stepper.fastAlong(slope);
        double[] fastBefore = stepper.fast();
        map.restore(map.start);
        map.move(map.start, slope, RAISED);
        map.save(map.start);
        stepper.raise(1 + RAISED);
        boolean taken = map.fixedCycle(mesh, false);
        stepper.raise(1);
        double[] bend = taken ? inverse.times(less(map.residual(), missed)) : new double[slope.length];
        double[] fastBend = new double[fastSlope.length];
        if (taken && map.norm(bend) <= MOST_BENT) {
            double[] moved = less(stepper.fast(), fastBefore);
            for (int k = 0; k < fastBend.length; k++) {
                fastBend[k] = (moved[k] - RAISED * fastSlope[k]) / (RAISED * RAISED);
            }
            for (int k = 0; k < bend.length; k++) {
                bend[k] /= RAISED * RAISED;
            }
        } else {
            Arrays.fill(bend, 0);
        }
        return new AlongMains(new Curve(slope, bend), new Curve(fastSlope, fastBend));
    }

    private static double[] less(double[] from, double[] what) {
        double[] difference = from.clone();
        for (int k = 0; k < difference.length; k++) {
            difference[k] -= what[k];
        }
        return difference;
    }

    /** Number of carried states it is for. */
    int size() {
        return carried.slope.length;
    }

    /** Moves a map from the state it is of to where the state should be with its sources raised. */
    void move(PeriodMap map, double raisedBy) {
        map.stepper.moveFast(fast.step(raisedBy));
        map.save(map.start);
        map.move(map.start, carried.step(raisedBy), 1);
    }
}
