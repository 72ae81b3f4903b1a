package fusetale.mna;

import org.jspecify.annotations.Nullable;

/**
 * Takes steps of {@link Sdirk} through a reduced network and carries, where asked, the sensitivity of the slow states to
 * their values at the start. Owns its workspace; one thread.
 */
final class Stepper {
    /**
     * Full scale [V] of a capacitor for the error control is at least this: what lies below decides no reading.
     */
    private static final double SCALE_FLOOR_VOLTS = 50e-3;
    /**
     * Full scale [A] of a winding is at least this. At every zero crossing of a rail without a capacitor, leakage
     * inductance rings with junction capacitance at microamperes; following that takes a thousand steps a cycle and moves
     * no reading by a microvolt.
     */
    static final double SCALE_FLOOR_AMPS = 0.1;
    /** Full scale of a device's own state is at least this, whatever its unit. */
    private static final double SCALE_FLOOR_OWN = 1e-3;

    /**
     * Newton's last step [V] a stage, per unit of the accuracy asked of a step. What is left of a junction's current after a
     * last step of 0.3 μV, times what the port sees, is what a cycle fails to repeat by: ten times more, and a starved
     * regulator's output wanders by 20 μV from cycle to cycle, so that no shooting ends.
     */
    private static final double NEWTON_VOLTS = 0.003;

    /** A state [V or A] beyond this has no digit left that tells what the parts do. */
    private static final double ENDLESS = 1e15;

    /** One over each of the two parts of a step. */
    private static final double EARLY = 1 / Sdirk.GAMMA;

    private static final double LATE = 1 / (1 - Sdirk.GAMMA);

    final Layout layout;
    final Reductions reductions;
    final PortStage stage;
    /** Linear states: see {@link Layout}. */
    final double[] x;
    /** Devices' own states. */
    final double[] own;
    /** Largest magnitude of each linear state lately, for errors. */
    final double[] scale;

    final Recorder recorder;
    private final double[] xNext;
    private final double[] ownNext;
    private final double[] slopeNext;
    private final double[] slopeMiddle;
    private final double[] slope;
    private final double[] voltsBefore;
    private final double[] ampsBefore;
    /** Least full scale of each slow state. */
    private final double[] scaleFloor;

    private final SourceShape[] sources;
    /** What each source is multiplied with. */
    private final double[] raised;

    private final double[] ownScale;
    private final double[] ownSlope;
    private final double[] ownSlopeMiddle;
    private final double[] ownSlopeNext;
    private boolean slopeKnown;
    /** A stage that finds no balance at the first try ends the step. */
    private boolean impatient;
    /**
     * Sensitivities by rows: see {@link StageSlopes}. All states are followed, though only some are perturbed at the start: a
     * junction's charge left out would leak from a small capacitor at every step.
     */
    private double[][] sensitivity = new double[0][];

    private double[][] sensitivityMiddle = new double[0][];
    private int[] carriedStates;
    private @Nullable NotSolved failure;

    Stepper(Reductions reductions) {
        this.layout = reductions.layout;
        this.reductions = reductions;
        this.stage = new PortStage(layout, NEWTON_VOLTS * 1e-4);
        this.x = new double[layout.states];
        this.own = new double[layout.deviceStates];
        this.scale = new double[layout.states];
        this.recorder = new Recorder(stage.input.length);
        this.xNext = new double[layout.states];
        this.ownNext = new double[layout.deviceStates];
        this.slope = new double[layout.slowStates];
        this.slopeNext = new double[layout.slowStates];
        this.slopeMiddle = new double[layout.slowStates];
        this.voltsBefore = new double[layout.ports];
        this.ampsBefore = new double[layout.ports];
        this.scaleFloor = new double[layout.slowStates];
        for (int s = 0; s < scaleFloor.length; s++) {
            scaleFloor[s] = layout.cells.get(s).branch() < 0 ? SCALE_FLOOR_VOLTS : SCALE_FLOOR_AMPS;
        }
        this.sources = layout.sources.stream().map(s -> s.shape()).toArray(SourceShape[]::new);
        this.raised = new double[sources.length];
        raise(1);
        this.ownScale = new double[layout.deviceStates];
        this.ownSlope = new double[layout.deviceStates];
        this.ownSlopeMiddle = new double[layout.deviceStates];
        this.ownSlopeNext = new double[layout.deviceStates];
        this.carriedStates = new int[layout.slowStates];
        for (int s = 0; s < carriedStates.length; s++) {
            carriedStates[s] = s;
        }
    }

    /** Sets how well the stages are solved, from the local accuracy asked of the steps; full scales of own states start anew. */
    void accuracy(double ratio) {
        java.util.Arrays.fill(ownScale, 0);
        stage.close(NEWTON_VOLTS * Math.min(ratio, 1e-4));
    }

    /** Multiplies all alternating sources with a ratio. */
    void raise(double ratio) {
        for (int s = 0; s < sources.length; s++) {
            raised[s] = sources[s] instanceof SourceShape.Sine ? ratio : 1;
        }
    }

    /** Whether from now on a stage that finds no balance at the first try ends its step, instead of being solved carefully. */
    void impatient(boolean yes) {
        impatient = yes;
    }

    /** Starts afresh: no state, devices at rest. */
    void rest() {
        java.util.Arrays.fill(x, 0);
        java.util.Arrays.fill(stage.volts, 0);
        java.util.Arrays.fill(stage.amps, 0);
        java.util.Arrays.fill(scale, 0);
        java.util.Arrays.fill(ownScale, 0);
        for (Layout.Device d : layout.devices) {
            for (int s = 0; s < d.law().states(); s++) {
                own[d.firstState() + s] = d.law().restingState(s);
            }
        }
        stage.sortSleepers();
        slopeKnown = false;
    }

    /** Takes the voltages of capacitors and the currents of windings from a state at rest. */
    void start(OperatingPoint from) {
        for (int s = 0; s < x.length; s++) {
            Layout.StateCell cell = layout.cells.get(s);
            x[s] = cell.branch() < 0 ? from.volts(cell.one(), cell.two()) : from.amps(cell.name());
            scale[s] = Math.abs(x[s]);
        }
        for (int p = 0; p < stage.volts.length; p++) {
            stage.volts[p] = from.volts(layout.portOne[p], layout.portTwo[p]);
        }
        stage.sortSleepers();
    }

    /** Charges one capacitor. */
    void charge(String capacitor, double volts) {
        int state = layout.stateNamed(capacitor);
        if (state < 0 || layout.cells.get(state).branch() >= 0) {
            throw new IllegalArgumentException("no capacitor " + capacitor + " in this network");
        }
        x[state] = volts;
        scale[state] = Math.abs(volts);
    }

    /** Starts from a periodic state of a network with the same states. */
    void begin(SampledRun.Restart from) {
        System.arraycopy(from.x, 0, x, 0, x.length);
        System.arraycopy(from.own, 0, own, 0, own.length);
        System.arraycopy(from.volts, 0, stage.volts, 0, stage.volts.length);
        System.arraycopy(from.amps, 0, stage.amps, 0, stage.amps.length);
        System.arraycopy(from.scale, 0, scale, 0, scale.length);
        stage.sortSleepers();
        slopeKnown = false;
    }

    /** Starts from what a neighbour of another shape has under the same names; all else at rest. */
    void beginByName(SampledRun.Restart from) {
        rest();
        Layout theirs = from.layout;
        for (int s = 0; s < layout.states; s++) {
            int t = theirs.stateNamed(layout.cells.get(s).name());
            if (t >= 0) {
                x[s] = from.x[t];
                scale[s] = from.scale[t];
            }
        }
        for (Layout.Device d : layout.devices) {
            for (Layout.Device t : theirs.devices) {
                PortLaw law = d.law();
                if (t.name().equals(d.name())
                        && t.law().ports() == law.ports()
                        && t.law().states() == law.states()) {
                    System.arraycopy(from.volts, t.firstPort(), stage.volts, d.firstPort(), law.ports());
                    System.arraycopy(from.own, t.firstState(), own, d.firstState(), law.states());
                }
            }
        }
    }

    /** Lets full scales fall, so that a surge long gone does not hide errors of today. */
    void ageScale() {
        for (int s = 0; s < scale.length; s++) {
            scale[s] *= 0.7;
        }
        for (int s = 0; s < ownScale.length; s++) {
            ownScale[s] *= 0.7;
        }
    }

    /** Forgets the slope, for a start that does not follow the step before. */
    void jump() {
        slopeKnown = false;
    }

    /** Why the last step failed. */
    NotSolved failure() {
        NotSolved f = failure;
        if (f == null) {
            throw new IllegalStateException("the last step did not fail");
        }
        return f;
    }

    /** Linear states whose sensitivities are carried: at first the slow ones. */
    int[] carriedStates() {
        return carriedStates;
    }

    /** Carries other linear states from the next start on. */
    void carryStates(int[] states) {
        carriedStates = states.clone();
    }

    /** Number of carried states: linear ones, then the devices' own. */
    int carried() {
        return carriedStates.length + layout.deviceStates;
    }

    /** Sets the sensitivities to those at the start of a period: the identity. */
    void startSensitivities() {
        int n = carried() + 1;
        if (sensitivity.length == 0 || sensitivity[0].length != n) {
            sensitivity = new double[layout.states + layout.deviceStates][n];
            sensitivityMiddle = new double[layout.states + layout.deviceStates][n];
        }
        for (double[] row : sensitivity) {
            java.util.Arrays.fill(row, 0);
        }
        for (int k = 0; k < carried(); k++) {
            sensitivity[place(k)][k] = 1;
        }
    }

    /** d(carried states now)/d(ln of all alternating sources), from the start of the period on. */
    double[] bySources() {
        double[] by = new double[carried()];
        for (int k = 0; k < by.length; k++) {
            by[k] = sensitivity[place(k)][by.length];
        }
        return by;
    }

    /** The linear states behind the slow ones, as they are now. */
    double[] fast() {
        return java.util.Arrays.copyOfRange(x, layout.slowStates, layout.states);
    }

    /** What these change by per unit of the logarithm of all alternating sources where the carried states start with {@code slope} each. */
    double[] fastAlong(double[] slope) {
        double[] along = new double[layout.states - layout.slowStates];
        for (int s = 0; s < along.length; s++) {
            double[] row = sensitivity[layout.slowStates + s];
            along[s] = row[slope.length];
            for (int k = 0; k < slope.length; k++) {
                along[s] += row[k] * slope[k];
            }
        }
        return along;
    }

    /** Adds to these. */
    void moveFast(double[] step) {
        for (int s = 0; s < step.length; s++) {
            x[layout.slowStates + s] += step[s];
        }
    }

    /** d(carried state j now)/d(carried state k at the start). */
    double sensitivity(int j, int k) {
        return sensitivity[place(j)][k];
    }

    /** Where carried state {@code k} stands among all linear states and the devices' own behind them. */
    private int place(int k) {
        return k < carriedStates.length ? carriedStates[k] : layout.states + k - carriedStates.length;
    }

    /**
     * One step, not yet accepted.
     *
     * @param level the step is 2^level grains
     * @param tick grain at which it starts
     * @param carry whether to carry sensitivities (they are then changed at once: only on meshes known to hold)
     * @return false where it failed, see {@link #failure}
     */
    boolean attempt(int level, long tick, boolean carry, boolean record) {
        Solved<Reduction> solved = reductions.level(level);
        if (!(solved instanceof Solved.Found<Reduction> found)) {
            failure = ((Solved.Failed<Reduction>) solved).reason();
            return false;
        }
        Reduction reduction = found.value();
        double h = reductions.grainSeconds() * (1L << level);
        double start = reductions.grainSeconds() * tick;
        System.arraycopy(stage.volts, 0, voltsBefore, 0, voltsBefore.length);
        System.arraycopy(stage.amps, 0, ampsBefore, 0, ampsBefore.length);
        System.arraycopy(x, 0, stage.input, 0, x.length);
        System.arraycopy(own, 0, stage.ownStart, 0, own.length);
        double middle = start + Sdirk.GAMMA * h;
        if (!solveStage(reduction, middle, level == 0)) {
            return false;
        }
        if (record) {
            recorder.add(middle, (1 - Sdirk.GAMMA) * h, level, stage.input);
        }
        if (carry) {
            stage.slopes.carry(reduction, sensitivity, sensitivity, sensitivityMiddle, 0);
        }
        double perSecond = 1 / reduction.stageSeconds;
        for (int s = 0; s < x.length; s++) {
            double dx = stage.out[s] - x[s];
            if (s < slopeMiddle.length) {
                slopeMiddle[s] = dx * perSecond;
            }
            stage.input[s] = x[s] + Sdirk.EXTRAPOLATION * dx;
        }
        for (int s = 0; s < own.length; s++) {
            ownSlopeMiddle[s] = (stage.ownEnd[s] - own[s]) * perSecond;
            stage.ownStart[s] = own[s] + Sdirk.EXTRAPOLATION * (stage.ownEnd[s] - own[s]);
        }
        if (!solveStage(reduction, start + h, level == 0)) {
            return false;
        }
        if (record) {
            recorder.add(start + h, Sdirk.GAMMA * h, level, stage.input);
        }
        if (carry) {
            stage.slopes.carry(reduction, sensitivity, sensitivityMiddle, sensitivity, Sdirk.EXTRAPOLATION);
        }
        for (int s = 0; s < slopeNext.length; s++) {
            slopeNext[s] = (stage.out[s] - stage.input[s]) * perSecond;
        }
        for (int s = 0; s < own.length; s++) {
            ownSlopeNext[s] = (stage.ownEnd[s] - stage.ownStart[s]) * perSecond;
        }
        System.arraycopy(stage.out, 0, xNext, 0, x.length);
        System.arraycopy(stage.ownEnd, 0, ownNext, 0, own.length);
        return true;
    }

    /** {@code shortest}: whether no shorter step can be tried where this one finds no balance. */
    private boolean solveStage(Reduction reduction, double seconds, boolean shortest) {
        for (int s = 0; s < sources.length; s++) {
            stage.input[layout.states + s] = raised[s] * sources[s].at(seconds);
        }
        if (stage.solve(reduction, seconds, PortStage.Relaxation.NONE)) {
            return true;
        }
        goBack();
        if (!impatient && stage.solveCarefully(reduction, seconds)) {
            return true;
        }
        goBack();
        if (!impatient && shortest && stage.solveAtLast(reduction, seconds)) {
            return true;
        }
        goBack();
        if (!impatient && shortest && stage.solveMonotonically(reduction, seconds)) {
            return true;
        }
        goBack();
        failure = new NotSolved(
                NotSolved.Kind.STEP_TOO_SMALL,
                java.util.List.of(),
                "the nonlinear parts found no balance at " + seconds + " s");
        return false;
    }

    private void goBack() {
        System.arraycopy(voltsBefore, 0, stage.volts, 0, voltsBefore.length);
        System.arraycopy(ampsBefore, 0, stage.amps, 0, ampsBefore.length);
    }

    /** Undoes a step that was attempted and is not wanted. */
    void refuse() {
        goBack();
        stage.sortSleepers();
    }

    /** Whether a linear state has grown beyond all measure; {@link #failure} then says which. */
    boolean isEndless() {
        for (int s = 0; s < x.length; s++) {
            if (!(Math.abs(x[s]) <= ENDLESS)) {
                String name = layout.cells.get(s).name();
                failure = new NotSolved(
                        NotSolved.Kind.STEP_TOO_SMALL,
                        java.util.List.of(name),
                        name + " grows without end: something feeds back what it gives");
                return true;
            }
        }
        return false;
    }

    /** Makes the attempted step the present state. */
    void accept() {
        System.arraycopy(xNext, 0, x, 0, x.length);
        System.arraycopy(ownNext, 0, own, 0, own.length);
        System.arraycopy(slopeNext, 0, slope, 0, slope.length);
        System.arraycopy(ownSlopeNext, 0, ownSlope, 0, ownSlope.length);
        slopeKnown = true;
        for (int s = 0; s < x.length; s++) {
            scale[s] = Math.max(scale[s], Math.abs(x[s]));
        }
        for (int s = 0; s < own.length; s++) {
            ownScale[s] = Math.max(ownScale[s], Math.abs(own[s]));
        }
    }

    /**
     * Error of the attempted step, the largest: of slow states and of devices' own as a ratio of full scale, the error
     * constant times h³ times the third derivative, from the slopes before, in the middle and at the end of the step.
     */
    double error(int level) {
        if (!slopeKnown) {
            return 0;
        }
        double h = reductions.grainSeconds() * (1L << level);
        double most = 0;
        for (int s = 0; s < slope.length; s++) {
            double full = Math.max(scaleFloor[s], Math.max(scale[s], Math.abs(xNext[s])));
            most = Math.max(most, bend(slope[s], slopeMiddle[s], slopeNext[s]) * h / full);
        }
        for (int s = 0; s < own.length; s++) {
            double full = Math.max(SCALE_FLOOR_OWN, Math.max(ownScale[s], Math.abs(ownNext[s])));
            most = Math.max(most, bend(ownSlope[s], ownSlopeMiddle[s], ownSlopeNext[s]) * h / full);
        }
        return Sdirk.ERROR_CONSTANT * most;
    }

    /** Second derivative, times h², of what has these values at the start, at γ and at the end of a step; its magnitude. */
    private static double bend(double start, double middle, double end) {
        return 2 * Math.abs((end - middle) * LATE - (middle - start) * EARLY);
    }
}
