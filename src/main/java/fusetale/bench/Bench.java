package fusetale.bench;

import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Net;
import fusetale.mna.NotSolved;
import fusetale.mna.OperatingPoint;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.model.Modelled;
import fusetale.model.NetworkBuilder;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * A machine on the bench, arranged, with a meter beside it. Keeps one solver for all that is asked of it; belongs to one
 * thread.
 *
 * <p>With the power on readings come from the periodic state. The meter's input is part of the circuit: where it would
 * change a reading by 0.02 % or more and by a tenth of the meter's accuracy or more, the state is solved again with the meter across
 * the points. How much it would change is estimated from the resistance between the points with the machine at rest:
 * semiconductors are then off, so it is overestimated rather than underestimated.
 *
 * <p>With the power off readings come from the state at rest, capacitors charged as far as they go. Ohms and diode test lay
 * their source across the points and read the voltage that results.
 */
public final class Bench {
    private final Circuit circuit;
    private final Arrangement arrangement;
    private final Meter meter;
    private final Modelled modelled;
    private final PeriodicSettings settings;
    private @Nullable Solver solver;
    private @Nullable Loading loading;

    private Bench(Circuit circuit, Arrangement arrangement, Meter meter, Modelled modelled, PeriodicSettings settings) {
        this.circuit = circuit;
        this.arrangement = arrangement;
        this.meter = meter;
        this.modelled = modelled;
        this.settings = settings;
    }

    /** The solver, made at the first look: beside a known state where there is one, which is faster and no different. */
    private Solver solver(@Nullable Seen near) {
        Solver ready = solver;
        if (ready == null) {
            PeriodicState known = near == null ? null : near.state();
            ready = known == null ? new Solver(modelled.network()) : Solver.near(modelled.network(), known);
            solver = ready;
        }
        return ready;
    }

    private Loading loading() {
        Loading ready = loading;
        if (ready == null) {
            ready = new Loading(solver(null));
            loading = ready;
        }
        return ready;
    }

    /**
     * A bench.
     *
     * @param circuit the machine, healthy or as supposed
     * @throws UnfitArrangement where the arrangement names what the circuit does not have
     */
    public static Bench of(Circuit circuit, Arrangement arrangement, Meter meter) throws UnfitArrangement {
        Circuit arranged = arrangement.appliedTo(circuit);
        return new Bench(
                arranged,
                arrangement,
                meter,
                NetworkBuilder.build(arranged, arrangement.conditions()),
                PeriodicSettings.mains(arranged.mains().hertz().si()));
    }

    /** The same for figures that are shown: in finer steps, see {@link PeriodicSettings#shown}. */
    public Bench shown() {
        return new Bench(
                circuit,
                arrangement,
                meter,
                modelled,
                PeriodicSettings.shown(circuit.mains().hertz().si()));
    }

    /** The circuit as arranged. */
    public Circuit circuit() {
        return circuit;
    }

    /** How the bench is set. */
    public Arrangement arrangement() {
        return arrangement;
    }

    /** The meter. */
    public Meter meter() {
        return meter;
    }

    /** The circuit as arranged, as a network. */
    public Modelled modelled() {
        return modelled;
    }

    /** What stands in the way of solving the circuit as arranged; empty where nothing does. */
    public List<NotSolved> flaws() {
        return solver(null).flaws();
    }

    /** Why a check cannot be made on this bench: a point it does not have, or ohms with the power on. */
    public Optional<String> refusal(Check check) {
        for (String point : List.of(check.from(), check.to())) {
            if (circuit.find(point).isEmpty()) {
                return Optional.of("no point " + point + UnfitArrangement.advice(point, Points.known(circuit)));
            }
        }
        if (arrangement.powerOn() && !check.function().powered()) {
            String refused = check.function() == MeterFunction.CONTINUITY ? "continuity" : "ohms and diode test";
            return Optional.of(refused + ": not with the power on. The voltage of the circuit would falsify the"
                    + " reading and may damage the meter; pull the plug and let the capacitors discharge");
        }
        if (!meter.has(check.function())) {
            return Optional.of("the meter '" + meter.name() + "' has no "
                    + check.function().words() + "; it has " + String.join(", ", meter.functions()));
        }
        return Optional.empty();
    }

    /**
     * Solves the machine and takes readings.
     *
     * @param checks what to measure, in order
     * @param near a look at the same or a neighbouring machine to start from
     * @param stopped asked now and then; true ends the work with {@link NotSolved.Kind#STOPPED}
     * @throws IllegalArgumentException where a check is one that {@link #refusal} refuses, with its reason
     */
    public Solved<Seen> look(List<Check> checks, @Nullable Seen near, BooleanSupplier stopped) {
        refuse(checks);
        return arrangement.powerOn() ? powered(checks, near, Load.EXACT, stopped) : unpowered(checks, true, stopped);
    }

    /**
     * Takes readings from a look that this bench has made, without solving the machine again.
     *
     * @param looked a look of this very bench
     * @param checks what to measure, in order
     * @param stopped asked now and then; true ends the work with {@link NotSolved.Kind#STOPPED}
     * @throws IllegalArgumentException where a check is one that {@link #refusal} refuses, or the look is another bench's
     */
    public Solved<Seen> read(Seen looked, List<Check> checks, BooleanSupplier stopped) {
        if (!looked.modelled().equals(modelled)) {
            throw new IllegalArgumentException("a look at another bench");
        }
        refuse(checks);
        PeriodicState state = looked.state();
        return state != null ? readings(state, checks, Load.EXACT, stopped) : unpowered(checks, true, stopped);
    }

    /**
     * The same at a glance, for figures that follow a hand: with the power on without the meter's load, amperes aside, and with
     * the power off without following what climbs where nothing was charged.
     *
     * @throws IllegalArgumentException as {@link #read}
     */
    public Solved<Seen> glance(Seen looked, List<Check> checks, BooleanSupplier stopped) {
        if (!looked.modelled().equals(modelled)) {
            throw new IllegalArgumentException("a look at another bench");
        }
        refuse(checks);
        PeriodicState state = looked.state();
        return state != null ? readings(state, checks, Load.NONE, stopped) : unpowered(checks, false, stopped);
    }

    /**
     * The same for a comparison of many machines: with the power on the meter's load only where it takes more than a
     * hundredth of a reading, and with the power off without following what climbs.
     *
     * @throws IllegalArgumentException as {@link #read}
     */
    public Solved<Seen> readNearly(Seen looked, List<Check> checks, BooleanSupplier stopped) {
        if (!looked.modelled().equals(modelled)) {
            throw new IllegalArgumentException("a look at another bench");
        }
        refuse(checks);
        PeriodicState state = looked.state();
        return state != null ? readings(state, checks, Load.NEARLY, stopped) : unpowered(checks, false, stopped);
    }

    /** How the meter's load is looked at with the power on. */
    private enum Load {
        EXACT,
        NEARLY,
        NONE
    }

    private static final double NEARLY_RATIO = 0.01;
    /** From so many checks on it is quicker to work out all voltages of a state at once: 8 ms of Night Ferry, one curve 0.1 to 0.3. */
    private static final int MANY_CHECKS = 40;

    /**
     * The same, but with the power on without the meter's load, amperes aside, and with the power off without following what
     * climbs where nothing was charged; nothing is refused.
     */
    Solved<Seen> lookWithoutLoad(List<Check> checks, @Nullable Seen near, BooleanSupplier stopped) {
        return arrangement.powerOn() ? powered(checks, near, Load.NONE, stopped) : unpowered(checks, false, stopped);
    }

    private void refuse(List<Check> checks) {
        for (Check check : checks) {
            refusal(check).ifPresent(reason -> {
                throw new IllegalArgumentException(reason);
            });
        }
    }

    private Solved<Seen> powered(List<Check> checks, @Nullable Seen near, Load loads, BooleanSupplier stopped) {
        Solved<PeriodicState> solved =
                solver(near).periodicState(settings, near == null ? null : near.state(), stopped);
        if (!(solved instanceof Solved.Found<PeriodicState> found)) {
            return new Solved.Failed<>(((Solved.Failed<PeriodicState>) solved).reason());
        }
        return readings(found.value(), checks, loads, stopped);
    }

    private Solved<Seen> readings(PeriodicState state, List<Check> checks, Load loads, BooleanSupplier stopped) {
        PeriodicState curves = checks.size() < MANY_CHECKS ? state : state.tabled();
        LoadedStates.Bare bare = new LoadedStates.Bare(state, curves);
        LoadedStates loaded = loads == Load.NEARLY
                ? new LoadedStates(solver(null), meter, loading(), settings, bare, NEARLY_RATIO)
                : new LoadedStates(solver(null), meter, loading(), settings, bare);
        List<Reading> readings = new ArrayList<>();
        List<Waveform> waveforms = new ArrayList<>();
        for (Check check : checks) {
            int one = node(check.from());
            int two = node(check.to());
            if (check.function() == MeterFunction.DC_AMPS) {
                Solved<LoadedStates.Taken> amps = loaded.amps(check, one, two, stopped);
                if (!(amps instanceof Solved.Found<LoadedStates.Taken> taken)) {
                    return new Solved.Failed<>(((Solved.Failed<LoadedStates.Taken>) amps).reason());
                }
                waveforms.add(taken.value().wave());
                readings.add(taken.value().reading());
                continue;
            }
            Solved<Waveform> volts = loads != Load.NONE
                    ? loaded.volts(check, one, two, stopped)
                    : new Solved.Found<>(curves.volts(one, two));
            if (!(volts instanceof Solved.Found<Waveform> wave)) {
                return new Solved.Failed<>(((Solved.Failed<Waveform>) volts).reason());
            }
            waveforms.add(wave.value());
            readings.add(meter.voltsReading(check, meter.volts(check.function(), wave.value())));
        }
        Set<String> remarks = new LinkedHashSet<>();
        if (state.work().method().contains("stepping")) {
            remarks.add("needed a slower way to settle");
        }
        checks.stream()
                .filter(c -> c.function().ofVolts())
                .forEach(c -> parted(c).ifPresent(remarks::add));
        readings.forEach(r -> tooMuch(r).ifPresent(remarks::add));
        if (checks.stream().anyMatch(c -> c.function() == MeterFunction.DC_AMPS)) {
            remarks.add("d.c. amps are those with the meter in the gap; fuses, ratings and what is seen are those with"
                    + " the gap open");
        }
        return new Solved.Found<>(new Seen(circuit, modelled, readings, waveforms, state, new ArrayList<>(remarks)));
    }

    private Solved<Seen> unpowered(List<Check> checks, boolean follows, BooleanSupplier stopped) {
        Solved<OperatingPoint> solved = solver(null).operatingPoint(null);
        if (!(solved instanceof Solved.Found<OperatingPoint> found)) {
            return new Solved.Failed<>(((Solved.Failed<OperatingPoint>) solved).reason());
        }
        OperatingPoint rest = found.value();
        OffReadings off = new OffReadings(
                        modelled, solver(null), meter, rest, settings, Capacitance.all(circuit), follows)
                .charged(arrangement.charged());
        List<Reading> readings = new ArrayList<>();
        List<Waveform> waveforms = new ArrayList<>();
        for (Check check : checks) {
            if (stopped.getAsBoolean()) {
                return new Solved.Failed<>(
                        new NotSolved(NotSolved.Kind.STOPPED, List.of(), "stopped before all readings were taken"));
            }
            Solved<OffReadings.Taken> taken = off.take(check, node(check.from()), node(check.to()));
            if (!(taken instanceof Solved.Found<OffReadings.Taken> ok)) {
                return new Solved.Failed<>(((Solved.Failed<OffReadings.Taken>) taken).reason());
            }
            readings.add(ok.value().reading());
            waveforms.add(Waveform.steady(ok.value().volts()));
        }
        Set<String> remarks = new LinkedHashSet<>(off.remarks());
        return new Solved.Found<>(new Seen(circuit, modelled, readings, waveforms, rest, new ArrayList<>(remarks)));
    }

    /** An ammeter that is asked for more than its highest range holds. */
    private static Optional<String> tooMuch(Reading reading) {
        boolean tooMuch = reading.check().function() == MeterFunction.DC_AMPS && reading.overRange();
        return tooMuch
                ? Optional.of(
                        reading.check().words() + ": more than the meter's highest range stands; its own fuse blows,"
                                + " and without one its leads and the circuit pay")
                : Optional.empty();
    }

    private Optional<String> parted(Check check) {
        Net from = net(check.from());
        Net to = net(check.to());
        if (modelled.joined(from, to)) {
            return Optional.empty();
        }
        return Optional.of(check.from() + " to " + check.to()
                + ": nothing but insulation joins these points; a meter shows stray voltage there");
    }

    private int node(String point) {
        return modelled.node(net(point));
    }

    private Net net(String point) {
        return circuit.find(point).orElseThrow(() -> new IllegalArgumentException("no point " + point));
    }
}
