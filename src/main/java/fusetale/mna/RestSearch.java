package fusetale.mna;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The state at rest by Newton's method with limited junction steps; where that fails, by continuation: a conductance across
 * every port lowered step by step, then the sources raised step by step (Ortega and Rheinboldt, Iterative Solution of
 * Nonlinear Equations, 1970, ch. 7.5, from memory). Last, what can stay on by itself is taken to have been switched on.
 */
final class RestSearch {
    private final PortStage stage;
    private final Reduction reduction;
    /** States that devices start from. */
    private double[] start;

    RestSearch(PortStage stage, Reduction reduction) {
        this.stage = stage;
        this.reduction = reduction;
        this.start = resting();
    }

    /** What was needed, and how many stages were solved. */
    record Success(String method, int passes) {}

    Solved<Success> search() {
        Layout layout = stage.layout;
        for (int s = 0; s < layout.sources.size(); s++) {
            stage.input[layout.states + s] = layout.sources.get(s).shape().mean();
        }
        stage.sortSleepers();
        if (solve(PortStage.Relaxation.NONE)) {
            return new Solved.Found<>(new Success("direct", 1));
        }
        stage.wakeAll();
        int passes = 1;
        for (boolean raise : new boolean[] {false, true}) {
            Arrays.fill(stage.volts, 0);
            int more = raise ? raiseSources() : lowerShunts();
            passes += Math.abs(more);
            if (more > 0) {
                return new Solved.Found<>(new Success(raise ? "sources raised" : "shunts lowered", passes));
            }
        }
        Arrays.fill(stage.volts, 0);
        passes++;
        if (stage.solveMonotonically(reduction, 0)) {
            return new Solved.Found<>(new Success("always nearer", passes));
        }
        for (double[] on : switchedOn()) {
            start = on;
            Arrays.fill(stage.volts, 0);
            passes++;
            if (solve(PortStage.Relaxation.NONE)) {
                return new Solved.Found<>(new Success("switched on", passes));
            }
            Arrays.fill(stage.volts, 0);
            int more = lowerShunts();
            passes += Math.abs(more);
            if (more > 0) {
                return new Solved.Found<>(new Success("switched on", passes));
            }
        }
        return new Solved.Failed<>(new NotSolved(
                NotSolved.Kind.NO_OPERATING_POINT, List.of(), "no state at rest was found in " + passes + " tries"));
    }

    private boolean solve(PortStage.Relaxation relaxation) {
        System.arraycopy(start, 0, stage.ownStart, 0, start.length);
        return stage.solve(reduction, 0, relaxation);
    }

    private double[] resting() {
        double[] w = new double[stage.ownStart.length];
        for (Layout.Device d : stage.layout.devices) {
            for (int s = 0; s < d.law().states(); s++) {
                w[d.firstState() + s] = d.law().restingState(s);
            }
        }
        return w;
    }

    /**
     * Where to start from if what blocks at rest does not stay so: each device that can stay on switched on alone, then all. A
     * thyristor that its own anode fires through whatever lies there is on ever after, and has no state that blocks.
     */
    private List<double[]> switchedOn() {
        List<double[]> all = new ArrayList<>();
        double[] together = resting();
        for (Layout.Device d : stage.layout.devices) {
            double[] alone = resting();
            for (int s = 0; s < d.law().states(); s++) {
                alone[d.firstState() + s] = d.law().switchedOnState(s);
                together[d.firstState() + s] = d.law().switchedOnState(s);
            }
            if (!Arrays.equals(alone, resting())) {
                all.add(alone);
            }
        }
        if (all.size() > 1) {
            all.add(together);
        }
        return all;
    }

    /** Passes taken; negative where it failed. */
    private int lowerShunts() {
        int passes = 0;
        for (double siemens = 1; siemens > 1e-13; siemens /= 10) {
            passes++;
            if (!solve(new PortStage.Relaxation(siemens, 1))) {
                return -passes;
            }
        }
        passes++;
        return solve(PortStage.Relaxation.NONE) ? passes : -passes;
    }

    private int raiseSources() {
        int passes = 0;
        double done = 0;
        double step = 0.1;
        while (done < 1) {
            double[] held = stage.volts.clone();
            double next = Math.min(1, done + step);
            passes++;
            if (solve(new PortStage.Relaxation(0, next))) {
                done = next;
                step *= 1.5;
            } else {
                System.arraycopy(held, 0, stage.volts, 0, held.length);
                step /= 3;
                if (step < 1e-5) {
                    return -passes;
                }
            }
        }
        return passes;
    }
}
