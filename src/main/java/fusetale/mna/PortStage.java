package fusetale.mna;

import org.jspecify.annotations.Nullable;

/**
 * Solves the ports of one implicit stage, or of the state at rest: finds port voltages v with v = v0 + Z·i(v), where v0 and
 * Z come from a {@link Reduction}. Holds all that one stage needs and reuses it; one thread.
 *
 * <p>Only the ports whose current answers to their voltage take part in Newton's iteration; the others are left to {@link
 * Sleepers}.
 */
final class PortStage {
    /** At rest, where one solution is the whole answer, Newton has converged when the last step was below this [V]. */
    static final double REST_VOLTS = 1e-10;
    /** What a large voltage adds to that, as a ratio of it. */
    private static final double STEP_RATIO = 1e-9;

    private static final int MOST_ITERATIONS = 60;
    /** The whole of a careful step is shortened to this [V]: a stage that saturates else throws its neighbours far off. */
    private static final double CAREFUL_VOLTS = 2;
    /** After so many iterations a careful step is shortened to half: where two ports throw each other to and fro. */
    private static final int CAREFUL_ITERATIONS = 40;
    /** At the last try it is shortened to half where it turns back instead. */
    private static final double TURNED_BACK = 0.5;
    /** And becomes longer again where it goes on: a junction that breaks down may have eighty volts to go. */
    private static final double GOES_ON = 1.3;

    private static final int MOST_CAREFUL_ITERATIONS = 600;
    /** Half of the part of a monotone step that is tried first, and the smallest. */
    private static final double FIRST_PART = 1.0 / 128;

    private static final double SMALLEST_PART = 0x1p-30;
    /** Factors are kept while each iteration's step is at most this part of the one before. */
    private static final double CHORD_CONTRACTION = 0.1;
    /** Slopes that have turned by more than this since they were factored are factored anew at once. */
    private static final double MOST_TURNED = 0.5;
    /** After the first iteration there is no step before: kept where the step was below so many times close enough. */
    private static final double CHORD_START = 1e4;
    /** A step that a law cut short counts as at least so many times too long. */
    private static final double HELD_BACK = 1e6;
    /** Only a step below so many times close enough may be the last. */
    private static final double NEARLY = 1e4;

    /** Sleepers that still move at the next look take part in Newton's iteration: what they do to each other is too much. */
    private static final int MOST_LOOKS = 3;

    final Layout layout;
    final double[] volts;
    final double[] amps;
    final double[] out;
    /** x*, u, i: what the reduction is multiplied with. */
    final double[] input;
    /** Predicted own states of the devices before the stage. */
    final double[] ownStart;
    /** Their own states after it. */
    final double[] ownEnd;
    /** Carries sensitivities through the stage solved last. */
    final StageSlopes slopes;

    private final StageValues values;
    private final PortPoint[] points;
    private final Sleepers sleepers;
    private final AwakePorts newton;
    private double closeVolts;
    private boolean careful;
    private boolean lastTry;
    private boolean monotone;
    private boolean sortFirst;
    /** How often the sleepers have been looked at in this stage. */
    private int looks;

    /** Where to expect the ports of the next stage. */
    final Foresight foresight;
    /** Newton iterations since the workspace was made. */
    long solves;

    /** What to solve besides the plain stage: for continuation of the operating point. */
    record Relaxation(double shuntSiemens, double sourceRatio) {
        static final Relaxation NONE = new Relaxation(0, 1);
    }

    /**
     * A workspace.
     *
     * @param closeVolts step [V] at which Newton has converged
     */
    PortStage(Layout layout, double closeVolts) {
        this.layout = layout;
        this.closeVolts = closeVolts;
        this.values = new StageValues(layout);
        this.points = values.points;
        this.volts = values.volts;
        this.amps = values.amps;
        this.out = values.out;
        this.input = values.input;
        this.ownStart = values.ownStart;
        this.ownEnd = values.ownEnd;
        this.sleepers = new Sleepers(values, closeVolts);
        this.newton = new AwakePorts(values);
        this.slopes = new StageSlopes(values, newton);
        this.foresight = new Foresight(layout.ports);
    }

    /** Sets the step [V] at which Newton has converged from now on. */
    void close(double newCloseVolts) {
        closeVolts = newCloseVolts;
        sleepers.close(newCloseVolts);
    }

    /** Has the next stage decide anew who sleeps, from the port voltages: after these were set from outside. */
    void sortSleepers() {
        sortFirst = true;
        foresight.breakOff();
    }

    /** Wakes every device: where nothing else led to a balance. */
    void wakeAll() {
        sleepers.wakeAll();
        sortFirst = false;
    }

    /** Solves like {@link #solve}, but with everybody awake, from where the ports are, and with fresh slopes throughout. */
    boolean solveCarefully(Reduction reduction, double seconds) {
        wakeAll();
        careful = true;
        boolean solved = solve(reduction, seconds, Relaxation.NONE);
        careful = false;
        return solved;
    }

    /** The same with steps that are shortened only where they turn back: where no shorter step in time is left. */
    boolean solveAtLast(Reduction reduction, double seconds) {
        lastTry = true;
        boolean solved = solveCarefully(reduction, seconds);
        lastTry = false;
        return solved;
    }

    /** The same with steps each of which must lead nearer: where those of {@link #solveAtLast} go round in a circle. */
    boolean solveMonotonically(Reduction reduction, double seconds) {
        monotone = true;
        boolean solved = solveCarefully(reduction, seconds);
        monotone = false;
        return solved;
    }

    /**
     * Solves one stage. On entry {@link #input} holds x* and u, {@link #ownStart} the devices' predicted states, {@link
     * #volts} a guess. On success {@link #out}, {@link #volts}, {@link #amps}, {@link #ownEnd} and the current part of
     * {@link #input} hold the answer.
     *
     * @return whether Newton converged
     */
    boolean solve(Reduction reduction, double seconds, Relaxation relaxation) {
        prepare(reduction, seconds, relaxation);
        looks = 0;
        for (int attempt = 0; attempt < MOST_ITERATIONS; attempt++) {
            newton.gather(reduction, sleepers.awake(), sleepers.turns());
            if (attempt == 0) {
                foresee(seconds);
            }
            if (!iterate(reduction, relaxation)) {
                foresight.breakOff();
                return false;
            }
            if (settled(reduction)) {
                System.arraycopy(amps, 0, input, values.firstPortInput, layout.ports);
                sleepers.finish(reduction);
                foresight.remember(seconds, volts);
                return true;
            }
        }
        foresight.breakOff();
        return false;
    }

    private void prepare(Reduction reduction, double seconds, Relaxation relaxation) {
        values.seconds = seconds;
        values.stepSeconds = reduction.stageSeconds;
        if (relaxation.shuntSiemens() > 0) {
            wakeAll();
        } else if (sortFirst) {
            sleepers.sort(reduction);
            sortFirst = false;
        }
        sleepers.narrow(reduction);
        if (foresight.sees(seconds)) {
            sleepers.foresee(reduction, foresight, seconds);
        }
        sleepers.putCurrents(reduction);
        addInputs(reduction, relaxation.sourceRatio());
    }

    /** Adds what predicted states and sources do to the outputs. */
    private void addInputs(Reduction reduction, double sourceRatio) {
        if (sourceRatio != 1) {
            for (int s = layout.states; s < values.firstPortInput; s++) {
                input[s] *= sourceRatio;
            }
        }
        reduction.add(input, values.firstPortInput, out);
        if (sourceRatio != 1) {
            for (int s = layout.states; s < values.firstPortInput; s++) {
                input[s] /= sourceRatio;
            }
        }
    }

    /** Starts the awake ports where they are to be expected. */
    private void foresee(double seconds) {
        if (careful || !foresight.sees(seconds)) {
            return;
        }
        for (int a = 0; a < newton.devices; a++) {
            int d = newton.device[a];
            PortPoint at = points[d];
            foresight.expect(values.laws[d], at, values.firstPort[d], seconds, volts);
            System.arraycopy(at.proposed, 0, volts, values.firstPort[d], at.proposed.length);
        }
    }

    /**
     * Newton's iteration, with the factors of an earlier iteration or stage as long as they still contract (the chord
     * method: Ortega and Rheinboldt, Iterative Solution of Nonlinear Equations, 1970, ch. 7), until the step after the one
     * taken would be close enough.
     */
    private boolean iterate(Reduction reduction, Relaxation relaxation) {
        if (newton.ports == 0) {
            return true;
        }
        if (monotone) {
            return descend(reduction);
        }
        double before = 0;
        double carefulVolts = CAREFUL_VOLTS;
        int most = careful ? MOST_CAREFUL_ITERATIONS : MOST_ITERATIONS;
        for (int iteration = 0; iteration < most; iteration++) {
            solves++;
            evaluateActive(relaxation.shuntSiemens());
            newton.residual(reduction, out, volts);
            double turned = newton.factored && before == 0 ? newton.turned() : 0;
            boolean fresh = !newton.factored || careful || turned > MOST_TURNED;
            if (fresh && !newton.factor()) {
                return false;
            }
            newton.solve();
            if (lastTry && iteration > 0) {
                carefulVolts = Math.min(CAREFUL_VOLTS, carefulVolts * (newton.turnsBack() ? TURNED_BACK : GOES_ON));
            } else if (careful) {
                carefulVolts = CAREFUL_VOLTS / (1L << (iteration / CAREFUL_ITERATIONS));
            }
            boolean shortened = careful && newton.shorten(carefulVolts);
            double moved = step();
            if (lastTry) {
                newton.taken();
            }
            if (!(moved < Double.POSITIVE_INFINITY)) {
                newton.factored = false;
                return false;
            }
            if (shortened) {
                continue;
            }
            double contraction = before > 0 ? moved / before : turned;
            if (moved <= 1 || (moved < NEARLY && newton.nextStep(fresh, contraction) <= closeVolts)) {
                carryCurrents();
                return true;
            }
            newton.factored = contraction < CHORD_CONTRACTION && (before > 0 || moved < CHORD_START);
            before = moved;
        }
        return false;
    }

    /**
     * Newton's iteration with each step halved until the one that the same slopes then ask for is shorter: the natural
     * monotonicity test (P. Deuflhard, Newton Methods for Nonlinear Problems, 2004, §3.3), which does not depend on how the
     * equations are scaled.
     */
    private boolean descend(Reduction reduction) {
        double[] from = volts.clone();
        double[] step = new double[newton.ports];
        double part = FIRST_PART;
        evaluateActive(0);
        for (int iteration = 0; iteration < MOST_CAREFUL_ITERATIONS; iteration++) {
            newton.residual(reduction, out, volts);
            if (!newton.factor()) {
                return false;
            }
            newton.solve();
            double length = newton.length();
            if (newton.longest() <= closeVolts) {
                newton.move(volts, 1);
                carryCurrents();
                return true;
            }
            System.arraycopy(volts, 0, from, 0, volts.length);
            System.arraycopy(newton.right, 0, step, 0, newton.ports);
            part = Math.min(1, 2 * part);
            while (true) {
                solves++;
                System.arraycopy(step, 0, newton.right, 0, newton.ports);
                newton.move(volts, part);
                evaluateActive(0);
                newton.residual(reduction, out, volts);
                newton.solve();
                double next = newton.length();
                if (next <= (1 - part / 4) * length) {
                    break;
                }
                part /= 2;
                if (!(part > SMALLEST_PART)) {
                    return false;
                }
                System.arraycopy(from, 0, volts, 0, volts.length);
            }
        }
        return false;
    }

    private void evaluateActive(double shuntSiemens) {
        for (int a = 0; a < newton.devices; a++) {
            int d = newton.device[a];
            values.evaluate(d);
            if (shuntSiemens > 0) {
                PortPoint at = points[d];
                int n = at.amps.length;
                for (int k = 0; k < n; k++) {
                    at.amps[k] += shuntSiemens * at.volts[k];
                    at.siemens[k * n + k] += shuntSiemens;
                }
            }
        }
    }

    /** Moves the awake voltages; the largest step in units of what is close enough, more than 1 where a law held back. */
    private double step() {
        double[] right = newton.right;
        double most = 0;
        int r = 0;
        for (int a = 0; a < newton.devices; a++) {
            int d = newton.device[a];
            PortPoint at = points[d];
            int first = values.firstPort[d];
            int n = at.volts.length;
            for (int k = 0; k < n; k++) {
                at.proposed[k] = volts[first + k] + right[r + k];
            }
            values.laws[d].limit(at.volts, at.proposed);
            for (int k = 0; k < n; k++, r++) {
                double present = volts[first + k];
                double proposed = present + right[r];
                double taken = at.proposed[k];
                double size = Math.abs(right[r]) / (closeVolts + STEP_RATIO * Math.abs(proposed));
                if (!(size < Double.POSITIVE_INFINITY)) {
                    return Double.POSITIVE_INFINITY;
                }
                most = Math.max(most, taken == proposed ? size : Math.max(size, HELD_BACK));
                right[r] = taken - present;
                volts[first + k] = taken;
            }
        }
        return most;
    }

    /**
     * Currents and own states at the final voltages by the slopes that were factored: the linear equations then hold
     * exactly, and the laws to what the last step left. (The present slopes would leave the linear ones open by the
     * difference, which across a megohm is volts.)
     */
    private void carryCurrents() {
        for (int a = 0; a < newton.devices; a++) {
            int d = newton.device[a];
            PortPoint at = points[d];
            System.arraycopy(at.amps, 0, amps, values.firstPort[d], at.amps.length);
            System.arraycopy(at.end, 0, ownEnd, values.firstState[d], at.end.length);
        }
        addSlopes(null);
    }

    /** Adds to the awake currents and own states what the step just taken does; and to the outputs, where asked. */
    private void addSlopes(@Nullable Reduction reduction) {
        double[] right = newton.right;
        int r = 0;
        int g = 0;
        for (int a = 0; a < newton.devices; a++) {
            int d = newton.device[a];
            PortPoint at = points[d];
            int first = values.firstPort[d];
            int n = at.amps.length;
            for (int k = 0; k < n; k++) {
                double di = 0;
                for (int j = 0; j < n; j++) {
                    di += newton.siemens[g + k * n + j] * right[r + j];
                }
                amps[first + k] += di;
                if (reduction != null) {
                    reduction.addPort(out, first + k, di);
                }
            }
            for (int s = 0; s < at.end.length; s++) {
                double dw = 0;
                for (int j = 0; j < n; j++) {
                    dw += at.endByVolts[s * n + j] * right[r + j];
                }
                ownEnd[values.firstState[d] + s] += dw;
            }
            r += n;
            g += n * n;
        }
    }

    /**
     * Lets the sleepers settle where the awake ports have put them, and the awake ports follow along their slopes; false
     * where somebody woke or they would have to go further than that, and Newton must go on.
     */
    private boolean settled(Reduction reduction) {
        for (int r = 0; r < newton.ports; r++) {
            int p = newton.port[r];
            reduction.addPort(out, p, amps[p]);
        }
        if (newton.devices == points.length) {
            return true;
        }
        while (true) {
            looks++;
            int found = sleepers.settle(reduction, looks == 1, looks > MOST_LOOKS);
            if (found == Sleepers.NOTHING) {
                return true;
            }
            if ((found & Sleepers.WOKE) != 0) {
                break;
            }
            newton.mismatch(reduction, out, volts);
            newton.solve();
            if (newton.longest() <= closeVolts) {
                // the awake stay; but one sleeper may have moved another
                continue;
            }
            if (newton.nextStep(true, 0) > closeVolts) {
                break;
            }
            for (int r = 0; r < newton.ports; r++) {
                volts[newton.port[r]] += newton.right[r];
            }
            addSlopes(reduction);
        }
        for (int r = 0; r < newton.ports; r++) {
            int p = newton.port[r];
            reduction.addPort(out, p, -amps[p]);
        }
        return false;
    }
}
