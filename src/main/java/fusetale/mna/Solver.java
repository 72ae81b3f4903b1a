package fusetale.mna;

import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Solves one network, keeping what can be kept between questions: the structure check, the reduction to ports and states
 * for each step size, workspaces. Belongs to one thread.
 */
public final class Solver {
    private final Network network;

    /** A solver for {@code network}; nothing is computed yet. */
    public Solver(Network network) {
        this.network = network;
    }

    /** The network. */
    public Network network() {
        return network;
    }

    /**
     * What is wrong with the structure or the values of the network, before any number is computed; all at once, empty
     * where nothing is.
     */
    public List<NotSolved> flaws() {
        return List.of();
    }

    /** The same network with a meter or load laid across two nodes; shares this solver's reductions. */
    public Solver with(Norton norton) {
        return norton.siemens() < 0 ? this : new Solver(network);
    }

    /**
     * The state at rest: sources at their mean, capacitors open, inductors short.
     *
     * @param near where to start from, an operating point of the same or a neighbouring network
     */
    public Solved<OperatingPoint> operatingPoint(@Nullable OperatingPoint near) {
        return new Solved.Failed<>(new NotSolved(NotSolved.Kind.STOPPED, List.of(), "not yet"));
    }

    /**
     * The state that repeats after one period.
     *
     * @param near where to start from, a periodic state of the same or a neighbouring network
     * @param stopped asked now and then; true ends the work with {@link NotSolved.Kind#STOPPED}
     */
    public Solved<PeriodicState> periodicState(
            PeriodicSettings settings, @Nullable PeriodicState near, BooleanSupplier stopped) {
        return new Solved.Failed<>(new NotSolved(NotSolved.Kind.STOPPED, List.of(), "not yet"));
    }

    /**
     * A run from rest (all capacitors empty, all inductors without current) to {@code seconds}.
     *
     * @param settings accuracy, and the period that the grid of steps is made of
     * @param seconds how long [s]
     */
    public Solved<Run> run(PeriodicSettings settings, double seconds) {
        return new Solved.Failed<>(new NotSolved(NotSolved.Kind.STOPPED, List.of(), "not yet"));
    }
}
