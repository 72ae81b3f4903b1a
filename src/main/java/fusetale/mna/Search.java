package fusetale.mna;

import org.jspecify.annotations.Nullable;

/** How far the search for a periodic state has come, pass by pass: what {@link Shooting} keeps between its passes. */
final class Search {
    /** A state further off than this ratio of full scale has hardly begun to settle. */
    static final double VERY_FAR = 0.25;
    /** After so many passes from a neighbour, further off than that, starting from rest is quicker. */
    private static final int FAR_PASSES = 3;

    private static final int MOST_FAR_PASSES = 5;
    private static final double STILL_FAR = 0.05;

    @Nullable
    Mesh mesh;

    double before = Double.POSITIVE_INFINITY;
    double best = Double.POSITIVE_INFINITY;
    /** Newton's last step, and the residual it started from; empty where the state came otherwise. */
    double[] step = new double[0];

    /** What of it was taken: less where a state would leave its bounds. */
    double[] taken = new double[0];
    /** Its length, as a ratio of full scale. */
    double length;

    double[] residualBefore = new double[0];
    /** Where that step started, and how much of it was taken. */
    final PeriodMap.Keep origin;

    double part = 1;
    /** The inverse is of this machine, not of a neighbour. */
    boolean own;
    /** How often the inverse had to be worked out anew. */
    int renewals;

    /** The steps are rough ones, for the way only. */
    boolean rough;
    /** They were laid far from here, or no longer fit: they are laid anew once the state is near. */
    boolean passing;
    /** The last cycle may be the answer: on fine steps, and recorded. */
    boolean holds;

    int refinements;
    int fastPasses;
    int slowPasses;
    int strays;
    /** No cycle has been completed yet. */
    boolean fresh = true;
    /** From a neighbour's state, on its steps; else from rest, on rough ones. */
    final boolean near;

    Search(@Nullable Mesh mesh, boolean near, PeriodMap.Keep origin) {
        this.mesh = mesh;
        this.near = near;
        this.rough = !near;
        this.passing = !near;
        this.origin = origin;
    }

    /** Whether the next cycle only finds out how near the neighbour is: one that is hard to take says that it is not. */
    boolean isTrial() {
        return fresh && near;
    }

    /** Whether a neighbour does not lead there quickly enough, by what a cycle misses by as a ratio of full scale. */
    boolean isHopeless(int pass, double norm) {
        boolean far = pass >= FAR_PASSES && norm > VERY_FAR;
        return near && (far || (pass >= MOST_FAR_PASSES && norm > STILL_FAR));
    }

    /** The next cycle is over other steps: what its residual changed by says little of the step that led to it. */
    void otherMap() {
        taken = new double[0];
        best = Double.POSITIVE_INFINITY;
    }

    /** The next state does not come from Newton's step. */
    void goOn(double norm) {
        before = norm;
        taken = new double[0];
    }
}
