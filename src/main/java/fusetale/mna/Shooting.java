package fusetale.mna;

import java.util.List;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Finds the state that one period maps to itself: Newton's method on the period map with the sensitivity of the end to the
 * start carried along (Aprille and Trick, "Steady-state analysis of nonlinear circuits with periodic inputs", Proc. IEEE
 * 60(1), 108-114, 1972), the inverse kept up between passes by Broyden's rank-one formula (Math. Comp. 19, 1965) so that a
 * neighbour's answer costs a few plain passes. The steps of a pass are fixed while Newton works; they are refined
 * where the local error asks for it, and the answer looked for again.
 */
final class Shooting {
    /** Above this ratio of full scale a state is far from the one that repeats. */
    private static final double FAR = 1e-2;
    /**
     * Above this the steps are laid anew before every pass; once more below it where they then prove too long, see {@link
     * #layAnew}.
     */
    private static final double STEPS_OF_ITS_OWN = 5e-2;
    /** A cycle that misses by more than so many times what is asked is no answer, whatever its steps. */
    private static final double ON_THE_WAY = 4;
    /** Contraction that Broyden's inverse shows once it has learnt; worse for several passes, it is worked out anew. */
    private static final double GOOD_CONTRACTION = 0.35;

    private static final double BAD_CONTRACTION = 0.9;
    private static final int MOST_SLOW_PASSES = 3;
    /** A step of Newton's that did not lead nearer is halved until this part of it is left. */
    private static final double SMALLEST_PART = 1.0 / 8;
    /** A step of more than this ratio of full scale says that the one before it led too far. */
    private static final double WILD = 10;
    /** After so many passes in which all but the junctions repeat, the junctions are taken into the shooting. */
    private static final int MOST_FAST_PASSES = 3;
    /** A residual so many times the best one shows that Newton has lost its way. */
    private static final double ASTRAY = 4;
    /** A neighbour that has not led next to the answer after so many passes was none. */
    private static final int MOST_PASSES_NEAR = 10;
    /** A step by a neighbour's inverse of more than this ratio of full scale is not taken. */
    private static final double TRUSTED = 0.5;
    /** In so many passes at first, lamps that a neighbour lights otherwise are put where they should settle. */
    private static final int MOST_SETTLED = 2;

    /** Newton must not want to go further than this ratio of full scale. */
    private static final double STEP_RATIO = 1e-5;
    /** Cycles the machine runs from rest before Newton takes over. */
    private static final int SETTLING_CYCLES = 2;

    private static final int MOST_STRAYS = 3;
    /**
     * Newton's iterations on the stages after which all is given up: a relay or a thyristor that is starved may chatter at every
     * shortest step, some minutes of it, and never repeat. What does repeat takes some ten thousand; of all that was ever found to, one
     * took 3.5 million, and one, which is given up by now, 17.7.
     */
    private static final long MOST_SOLVES = 4_000_000;
    /** Newton is tried again after so many cycles of plain stepping, and each time it fails after so many times more. */
    private static final int FIRST_TRY = 20;

    private static final int TRIES_RATIO = 3;
    /** Far off, after the inverse has been worked out so often Newton gets nowhere: strides do. */
    private static final int MOST_RENEWALS = 3;
    /** States outside the shooting must repeat to this ratio of full scale, at least a volt. */
    private static final double FAST_RATIO = 5e-5;

    private static final int MOST_REFINEMENTS = 3;
    /** A corner that moved inside its step since the steps were laid may err by this many times the accuracy, once. */
    private static final double TOLERATED = 5;

    private final Stepper stepper;
    private final Layout layout;
    private final PeriodicSettings settings;
    private final BooleanSupplier asked;
    /** Asked to stop, or enough has been tried. */
    private final BooleanSupplier stopped;

    /** Newton's iterations of this workspace when the search began. */
    private long solvesBefore;

    private final PeriodMap map;
    private final PeriodMap.Keep start;
    private final PeriodMap.Keep end;
    private final PeriodMap.Keep origin;
    private @Nullable PeriodInverse inverse;
    /** Where the search began: whoever starts from there or from what was found in one cycle gets the same bits. */
    private SampledRun.@Nullable Restart neighbour;

    /** Whether the last cycle carried its sensitivities. */
    private boolean sharp;
    /** What was found on steps that are then made finer. */
    private @Nullable Solved<PeriodicState> rougher;

    private final FinerSteps finer;
    private boolean tooRough;
    /** Whether the search began with a neighbour, even where that led nowhere. */
    private boolean neighbourGiven;

    Shooting(Stepper stepper, PeriodicSettings settings, BooleanSupplier asked) {
        this.stepper = stepper;
        this.layout = stepper.layout;
        this.settings = settings;
        this.asked = asked;
        this.stopped = () -> asked.getAsBoolean() || stepper.stage.solves - solvesBefore > MOST_SOLVES;
        this.finer = new FinerSteps(settings.accuracy());
        this.map = new PeriodMap(stepper, settings, stopped);
        this.start = map.start;
        this.end = new PeriodMap.Keep(stepper);
        this.origin = new PeriodMap.Keep(stepper);
    }

    /**
     * Looks for the periodic state: from {@code near} where that is given, else or when that leads nowhere from rest, and
     * at last by letting the machine run on.
     */
    Solved<PeriodicState> solve(SampledRun.@Nullable Restart near) {
        solvesBefore = stepper.stage.solves;
        stepper.stage.foresight.forget();
        neighbourGiven = near != null;
        if (near != null) {
            load(near);
            Solved<PeriodicState> found = passes(near.mesh.atMost(settings.coarsest()), true);
            if (settled(found)) {
                return found;
            }
        }
        for (boolean inStrides : new boolean[] {false, true}) {
            Mesh mesh = settledFromRest();
            if (mesh == null) {
                return failed();
            }
            Solved<PeriodicState> found = inStrides ? strides() : passes(mesh, false);
            if (settled(found)) {
                return found;
            }
        }
        return orRougher(plainStepping());
    }

    private @Nullable Mesh settledFromRest() {
        inverse = null;
        stepper.rest();
        Mesh mesh = null;
        for (int k = 0; k < SETTLING_CYCLES; k++) {
            mesh = map.roughCycle();
            if (mesh == null) {
                return null;
            }
        }
        return mesh;
    }

    /** Newton's passes from where strides of many cycles lead. */
    private Solved<PeriodicState> strides() {
        Mesh mesh = settings.mostPasses() > 0 ? new PseudoTransient(map, stopped).approach() : null;
        inverse = null;
        if (mesh == null) {
            return givenUp();
        }
        return passes(mesh, false);
    }

    /** Found, or stopped on request: nothing more to try. */
    private static boolean settled(Solved<PeriodicState> answer) {
        return !(answer instanceof Solved.Failed<PeriodicState> f) || f.reason().kind() == NotSolved.Kind.STOPPED;
    }

    /** Newton's passes; what they found on rougher steps where finer ones lead nowhere. */
    private Solved<PeriodicState> passes(@Nullable Mesh first, boolean near) {
        return orRougher(newton(first, near));
    }

    private Solved<PeriodicState> orRougher(Solved<PeriodicState> found) {
        Solved<PeriodicState> before = rougher;
        return before == null || settled(found) ? found : before;
    }

    private Solved<PeriodicState> newton(@Nullable Mesh first, boolean near) {
        Search search = new Search(first, near, new PeriodMap.Keep(stepper));
        int most = near ? MOST_PASSES_NEAR : settings.mostPasses();
        int last = most;
        for (int pass = 1; pass <= last || (pass <= 2 * last && search.before <= FAR / 10); pass++) {
            if (stopped.getAsBoolean()) {
                return givenUp();
            }
            map.save(start);
            boolean carry = inverse == null;
            boolean trial = search.isTrial();
            Mesh mesh = cycle(search);
            double[] residual = map.residual();
            if (mesh != null) {
                map.save(end);
            }
            if (mesh == null && trial) {
                // other parts conduct here than in the neighbour
                map.restore(start);
                search.fresh = false;
                search.goOn(Double.POSITIVE_INFINITY);
                continue;
            }
            if (mesh == null || (carry && !measured(search, mesh))) {
                if (!recovered(search)) {
                    return failed();
                }
                continue;
            }
            search.fresh = false;
            double norm = map.norm(residual);
            boolean repeats = search.holds && norm <= settings.periodicity() && stepLeft(residual) <= STEP_RATIO;
            boolean grows = repeats && !map.isBounded();
            if (repeats && !grows && map.fastNorm() <= FAST_RATIO) {
                Solved<PeriodicState> answer = refined(search, norm) ? null : answer(search, mesh, residual, norm);
                if (answer != null) {
                    return answer;
                }
                last = rougher == null ? last : pass + most;
            } else if (grows
                    || search.isHopeless(pass, norm)
                    || (search.renewals >= MOST_RENEWALS && norm > FAR / 10)) {
                return noPeriodicState();
            } else if (repeats && ++search.fastPasses >= MOST_FAST_PASSES) {
                map.widen();
                inverse = null;
                search.fastPasses = 0;
            } else if (!settledOwn(search, pass, norm) && learnt(search, carry, residual, norm)) {
                double[] step = step(residual);
                if (map.norm(step) > WILD && retreated(search, step.length)) {
                    continue;
                }
                search.best = Math.min(search.best, norm);
                search.origin.copy(start);
                search.part = 1;
                search.step = step;
                search.taken = map.move(search.origin, search.step, search.part);
                search.length = map.norm(search.step);
                search.residualBefore = residual;
                search.before = norm;
                layAnew(search, norm);
                if (search.length > TRUSTED && !search.own && !carry) {
                    // no neighbour's inverse says where this leads: go on from where the machine itself has come
                    map.restore(end);
                    inverse = null;
                    search.goOn(norm);
                }
                search.own |= carry;
            }
        }
        return noPeriodicState();
    }

    /**
     * One cycle from the present state; null where it failed. Far off, on steps of its own, very far off on rough ones; then
     * on steps that are kept. A cycle that laid its steps is not taken again unless it may be the answer.
     */
    private @Nullable Mesh cycle(Search search) {
        boolean far = search.before > STEPS_OF_ITS_OWN;
        boolean rough = search.before > Search.VERY_FAR / 2;
        if (!search.fresh && (far || search.passing)) {
            Mesh laid = rough ? map.roughCycle() : map.adaptiveCycle();
            if (search.rough && !rough) {
                search.otherMap();
            }
            search.mesh = laid;
            search.rough = rough;
            search.passing = far;
            if (laid != null && map.norm(map.residual()) > ON_THE_WAY * settings.periodicity()) {
                search.holds = false;
                return laid;
            }
            map.restore(start);
        }
        search.holds = !search.rough;
        Mesh mesh = search.mesh;
        stepper.impatient(search.isTrial());
        boolean taken = mesh != null && map.fixedCycle(mesh, false);
        stepper.impatient(false);
        return taken ? mesh : null;
    }

    /**
     * Works out the inverse at the start of the cycle just taken, on steps twice as long: it only steers, and
     * the tape is not of the answer then. False where that cycle fails on its own steps too.
     */
    private boolean measured(Search search, Mesh mesh) {
        map.restore(start);
        boolean carried = map.fixedCycle(mesh.coarser(), true);
        if (!carried) {
            map.restore(start);
            carried = map.fixedCycle(mesh, true);
        }
        inverse = carried ? PeriodInverse.of(stepper) : null;
        map.restore(end);
        search.holds = false;
        return carried;
    }

    /** Has the steps laid anew where corners have moved inside them and the state is near enough for them to stay. */
    private void layAnew(Search search, double norm) {
        if (search.holds
                && norm <= FAR / 10
                && search.refinements < MOST_REFINEMENTS
                && map.worst() > TOLERATED * map.accuracy()) {
            search.refinements++;
            search.passing = true;
            search.otherMap();
        }
    }

    /** Puts lamps that are far off where they should settle; false where there are none. */
    private boolean settledOwn(Search search, int pass, double norm) {
        if (!search.near || pass > MOST_SETTLED || norm <= FAR || !map.settleOwn(FAR)) {
            return false;
        }
        search.goOn(norm);
        return true;
    }

    /**
     * Takes the last cycle once more with its sensitivities, from where Newton would go: neighbours then start from the inverse
     * as it is here rather than as Broyden guessed it on the way. It costs one pass and spares each of them two.
     *
     * @return what that cycle, which is the answer now, missed by; NaN where it is no answer
     */
    private double sharpen(Mesh mesh, double[] residual) {
        map.restore(start);
        PeriodInverse known = inverse;
        if (known != null) {
            map.move(start, known.times(residual), 1);
            map.save(start);
        }
        double[] halved = map.halvedResidual(mesh);
        if (!map.exactCycle(mesh)) {
            return Double.NaN;
        }
        inverse = PeriodInverse.of(stepper);
        tooRough = finer.wanted(map, halved, inverse);
        double norm = map.norm(map.residual());
        return norm <= settings.periodicity() ? norm : Double.NaN;
    }

    /** After a cycle that failed: a shorter step there, or another start; false where neither is left. */
    private boolean recovered(Search search) {
        Mesh mesh = search.mesh;
        if (mesh != null && mesh.level(map.failedStep()) > 0) {
            search.mesh = mesh.halved(map.failedStep());
            map.restore(start);
            return true;
        }
        if (search.fresh || search.strays++ >= MOST_STRAYS) {
            return false;
        }
        // Newton's step led where nothing balances: go on from where the machine itself had come
        map.restore(end);
        inverse = null;
        search.goOn(Double.POSITIVE_INFINITY);
        return true;
    }

    /** Lays the steps anew where corners have moved inside them; false where the steps are fine, or enough was tried. */
    private boolean refined(Search search, double norm) {
        if (search.refinements >= MOST_REFINEMENTS || map.worst() <= TOLERATED * map.accuracy()) {
            return false;
        }
        search.refinements++;
        search.mesh = map.adaptiveCycle();
        map.restore(end);
        search.goOn(norm);
        return true;
    }

    /**
     * Brings the inverse up to date with the cycle just taken; false where that plain cycle has to be the step. A step is
     * judged by what the inverse it came from makes of the residual it led to (the natural monotonicity test of P. Deuflhard,
     * Newton Methods for Nonlinear Problems, 2004, §3.3): residuals themselves say little where charge flows in fast and
     * leaks out slowly.
     */
    private boolean learnt(Search search, boolean carried, double[] residual, double norm) {
        PeriodInverse known = inverse;
        if (carried || known == null) {
            inverse = known == null ? PeriodInverse.of(stepper) : known;
            if (inverse == null) {
                return false;
            }
        } else if (search.taken.length == residual.length) {
            double left = map.norm(known.times(residual));
            if (left > search.length && retreated(search, residual.length)) {
                return false;
            }
            known.learn(search.taken, map.fullScale(), search.residualBefore, residual);
            search.slowPasses = left > GOOD_CONTRACTION * search.length ? search.slowPasses + 1 : 0;
            if (search.slowPasses >= MOST_SLOW_PASSES || left > BAD_CONTRACTION * search.length) {
                search.slowPasses = 0;
                search.renewals++;
                inverse = null; // stale: work it out anew from here
                search.goOn(norm);
                return false;
            }
        }
        if (norm > ASTRAY * search.best) {
            // Newton went astray: let the machine run on by itself
            search.best = norm;
            inverse = null;
            search.goOn(norm);
            return false;
        }
        return true;
    }

    /** Runs on, cycle by cycle, until the state repeats by itself. */
    private Solved<PeriodicState> plainStepping() {
        stepper.rest();
        Mesh mesh = null;
        int nextTry = FIRST_TRY;
        for (int k = 0; k < settings.mostCycles(); k++) {
            if (stopped.getAsBoolean()) {
                return givenUp();
            }
            map.save(start);
            if (k % 8 == 0) {
                mesh = map.adaptiveCycle();
                map.restore(start);
            }
            if (mesh == null) {
                return failed();
            }
            if (!map.fixedCycle(mesh, false)) {
                // steps laid some cycles ago are too long by now
                map.restore(start);
                mesh = map.adaptiveCycle();
                if (mesh == null) {
                    return failed();
                }
                continue;
            }
            if (!map.isBounded()) {
                return noPeriodicState();
            }
            double norm = map.norm(map.residual());
            if (norm <= settings.periodicity() && map.fastNorm() <= FAST_RATIO) {
                rougher = found("stepping", false, mesh, norm);
                double[] halved = map.halvedResidual(mesh);
                if (!map.fixedCycle(mesh, true) || !finer.wanted(map, halved, PeriodInverse.of(stepper))) {
                    return rougher;
                }
                mesh = map.adaptiveCycle();
                continue;
            }
            if (norm <= FAR && k >= nextTry) {
                // what creeps on for hundreds of cycles from here is what Newton is quick at
                nextTry = TRIES_RATIO * k;
                Solved<PeriodicState> found = newtonFromHere(mesh);
                if (settled(found)) {
                    return found;
                }
            }
        }
        return noPeriodicState();
    }

    /** Newton's passes from the present state, to which it comes back where they lead nowhere. */
    private Solved<PeriodicState> newtonFromHere(Mesh mesh) {
        PeriodMap.Keep here = new PeriodMap.Keep(stepper);
        map.save(here);
        double[] scale = stepper.scale.clone();
        int[] carried = stepper.carriedStates();
        inverse = null;
        Solved<PeriodicState> found = passes(mesh, false);
        if (!settled(found)) {
            // nor must full scales of where they went astray let a cycle pass that does not repeat
            System.arraycopy(scale, 0, stepper.scale, 0, scale.length);
            stepper.carryStates(carried);
            map.restore(here);
        }
        return found;
    }

    /**
     * The cycle just taken, which repeats; where no neighbour was given, made ready for those to come first. Null where its
     * steps have proved too long: finer ones are laid.
     */
    private @Nullable Solved<PeriodicState> answer(Search search, Mesh mesh, double[] residual, double norm) {
        double missed = norm;
        tooRough = false;
        if (!neighbourGiven) {
            origin.copy(start);
            double sharpened = sharpen(mesh, residual);
            sharp = sharpened <= settings.periodicity();
            missed = sharp ? sharpened : norm;
            if (!sharp) {
                start.copy(origin);
                map.restore(start);
                if (!map.fixedCycle(mesh, false)) {
                    return failed();
                }
            }
        }
        Solved<PeriodicState> found = found("shooting", search.near, mesh, missed);
        if (!tooRough) {
            return found;
        }
        rougher = found;
        map.restore(start);
        search.mesh = map.adaptiveCycle();
        map.restore(start);
        search.refinements = 0;
        search.renewals = 0;
        search.otherMap();
        search.goOn(norm);
        return null;
    }

    private Solved<PeriodicState> noPeriodicState() {
        return new Solved.Failed<>(new NotSolved(
                NotSolved.Kind.NO_PERIODIC_STATE,
                List.of(),
                "no state that repeats was found within " + map.cycles() + " cycles"));
    }

    /** Stopped on request, or enough was tried. */
    private Solved<PeriodicState> givenUp() {
        if (!asked.getAsBoolean()) {
            return noPeriodicState();
        }
        return new Solved.Failed<>(new NotSolved(NotSolved.Kind.STOPPED, List.of(), "stopped on request"));
    }

    private Solved<PeriodicState> found(String method, boolean near, Mesh mesh, double norm) {
        Work work = new Work(method, map.cycles(), stepper.stage.solves - solvesBefore, norm);
        // in one cycle from a neighbour, on its steps: its own state again
        SampledRun.Restart same = map.cycles() == 1 ? SampledRun.Restart.over(mesh, neighbour) : null;
        double[][] vectors = {
            start.x.clone(),
            start.own.clone(),
            start.volts.clone(),
            start.amps.clone(),
            same != null && near ? same.scale : stepper.scale.clone()
        };
        // what was found from rest, or repeats as its neighbour did, has neighbours still to come
        float[] stageVolts =
                !near ? stepper.stage.foresight.cycle(mesh) : same != null ? same.stageVolts : new float[0];
        PeriodInverse kept = inverse == null ? null : inverse.copy();
        Recorder.Tape tape = stepper.recorder.tape();
        AlongMains along = sharp && kept != null ? alongMains(mesh, kept) : same != null ? same.alongMains : null;
        SampledRun.Restart restart =
                new SampledRun.Restart(layout, mesh, stepper.carriedStates().clone(), vectors, kept, stageVolts, along);
        return new Solved.Found<>(new SampledRun(stepper.reductions, tape, work, restart));
    }

    /** How the state goes with the mains: the cycle with its sensitivities is the last one taken, and one more is. */
    private AlongMains alongMains(Mesh mesh, PeriodInverse known) {
        map.save(end);
        origin.copy(start);
        AlongMains along = AlongMains.of(map, mesh, known);
        start.copy(origin);
        map.restore(end);
        return along;
    }

    private Solved<PeriodicState> failed() {
        return stopped.getAsBoolean() ? givenUp() : new Solved.Failed<>(stepper.failure());
    }

    private void load(SampledRun.Restart near) {
        if (!near.layout.sameStates(layout)) {
            stepper.beginByName(near);
            return;
        }
        neighbour = near;
        inverse = new Neighbour(near).load(map);
    }

    /**
     * How far Newton would still go, as a ratio of full scale: of a core whose offset takes a hundred cycles to die out the
     * mismatch of one cycle shows a hundredth.
     */
    private double stepLeft(double[] residual) {
        if (inverse == null) {
            inverse = PeriodInverse.of(stepper);
        }
        return inverse == null ? 0 : map.norm(inverse.times(residual));
    }

    /**
     * Takes less of Newton's last step, where there was one and some of it is left: where charge flows in fast and leaks out
     * slowly, it goes too far.
     */
    private boolean retreated(Search search, int size) {
        if (search.step.length != size || search.part <= SMALLEST_PART) {
            return false;
        }
        search.part /= 2;
        map.restore(search.origin);
        search.taken = map.move(search.origin, search.step, search.part);
        return true;
    }

    private double[] step(double[] residual) {
        return Objects.requireNonNull(inverse).times(residual);
    }
}
