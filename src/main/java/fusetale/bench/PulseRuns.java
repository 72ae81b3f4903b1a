package fusetale.bench;

import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.DualCoil;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Part;
import fusetale.circuit.Relay;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Run;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.model.Modelled;
import fusetale.model.NetworkBuilder;
import fusetale.model.TimedOutput;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Pulses drivers, once from each of several moments of the mains cycle: on a rail without a reservoir it matters whether the
 * pulse begins at a crest or at a zero. Each run starts from the state at rest, which is worked out once. All pulses of an
 * arrangement begin together.
 */
public final class PulseRuns {
    /** Moments of the mains cycle, evenly apart, the last a whole cycle after the zero. */
    public static final int MOMENTS = 8;

    /** A run goes on for at least so many cycles after the last pulse ... */
    private static final int CYCLES_AFTER = 2;
    /** ... and for so many time constants of the slowest pulsed coil, whose current then is below e^-8 of what it was. */
    private static final double CONSTANTS_AFTER = 8;
    /** Cycles after which a pulse begins that no cycle at rest sees. */
    private static final int LATER = 3;

    private PulseRuns() {}

    /**
     * The runs, by rising moment.
     *
     * @param healthy the machine as drawn: what commands what, and how, is looked up there
     * @param circuit the machine as arranged and as supposed
     * @param supply what feeds it, with its pulses [s] by coil, lamp or logic output
     * @param stuck logic outputs that no pulse moves
     * @param near a look at it at rest to start from
     * @param stopped asked now and then; true ends the work
     */
    public static Solved<List<PulseRun>> of(
            Circuit healthy,
            Circuit circuit,
            Arrangement supply,
            Set<String> stuck,
            @Nullable Seen near,
            BooleanSupplier stopped) {
        double period = 1 / circuit.mains().hertz().si();
        PeriodicSettings settings = PeriodicSettings.mains(1 / period);
        Map<String, Double> pulses = supply.pulsedSeconds();
        double longest = pulses.values().stream().mapToDouble(s -> s).max().orElse(0);
        double after = Math.max(CYCLES_AFTER * period, CONSTANTS_AFTER * slowest(healthy, circuit, pulses.keySet()));
        List<PulseRun> runs = new ArrayList<>();
        Solved<PeriodicState> resting =
                rest(build(healthy, circuit, supply, stuck, LATER * period), settings, near, stopped);
        if (!(resting instanceof Solved.Found<PeriodicState> rest)) {
            return new Solved.Failed<>(((Solved.Failed<PeriodicState>) resting).reason());
        }
        for (int moment = 1; moment <= MOMENTS; moment++) {
            double from = moment * period / MOMENTS;
            Modelled modelled = build(healthy, circuit, supply, stuck, from);
            Solver solver = Solver.near(modelled.network(), rest.value());
            double end = from + longest + after;
            Solved<Run> ran = solver.runFrom(settings, rest.value(), end, stopped);
            if (!(ran instanceof Solved.Found<Run> run)) {
                return new Solved.Failed<>(((Solved.Failed<Run>) ran).reason());
            }
            runs.add(new PulseRun(modelled, rest.value(), run.value(), from, end));
        }
        return new Solved.Found<>(runs);
    }

    /** The state at rest of a network that is as that of every run until its pulse begins. */
    private static Solved<PeriodicState> rest(
            Modelled pulsedLater, PeriodicSettings settings, @Nullable Seen near, BooleanSupplier stopped) {
        PeriodicState known = near == null ? null : near.state();
        Solver solver = known == null ? new Solver(pulsedLater.network()) : Solver.near(pulsedLater.network(), known);
        return solver.periodicState(settings, known, stopped);
    }

    private static Modelled build(
            Circuit healthy, Circuit circuit, Arrangement supply, Set<String> stuck, double from) {
        List<TimedOutput> timed = timed(healthy, supply.pulsedSeconds(), stuck, from);
        return NetworkBuilder.build(circuit, supply.conditions().with(timed));
    }

    private static List<TimedOutput> timed(
            Circuit healthy, Map<String, Double> pulses, Set<String> stuck, double from) {
        List<TimedOutput> timed = new ArrayList<>();
        new TreeMap<>(pulses).forEach((driven, seconds) -> {
            for (LogicOutput output : Driven.outputs(healthy, driven)) {
                if (!stuck.contains(output.name())) {
                    timed.add(new TimedOutput(output.name(), Driven.working(output), from, from + seconds));
                }
            }
        });
        return timed;
    }

    /** Longest L/R [s] of all windings of what is pulsed, by its own name or by that of what commands it. */
    private static double slowest(Circuit healthy, Circuit circuit, Collection<String> driven) {
        Set<String> pulsed = new TreeSet<>(driven);
        for (String name : driven) {
            for (LogicOutput output : Driven.outputs(healthy, name)) {
                if (output.commands() != null) {
                    pulsed.add(output.commands());
                }
            }
        }
        return pulsed.stream()
                .flatMap(name -> circuit.part(name).stream())
                .mapToDouble(PulseRuns::slowest)
                .max()
                .orElse(0);
    }

    private static double slowest(Part part) {
        if (part instanceof Coil c) {
            return c.henries().si() / c.ohms().si();
        } else if (part instanceof DualCoil c) {
            return Math.max(
                    c.powerHenries().si() / c.powerOhms().si(),
                    c.holdHenries().si() / c.holdOhms().si());
        } else if (part instanceof Relay r) {
            return r.winding().henries().si() / r.winding().ohms().si();
        }
        return 0;
    }
}
