package fusetale.bench;

import fusetale.circuit.Circuit;
import fusetale.circuit.Net;
import fusetale.mna.OperatingPoint;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.model.Modelled;
import fusetale.model.NetworkBuilder;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/**
 * A machine with its power off, measured one check after another, each with what the meter's source does to the circuit.
 * Nothing that climbs is followed. Belongs to one thread.
 */
public final class AtRest {
    private final Circuit circuit;
    private final Modelled modelled;
    private final OffReadings readings;

    private AtRest(Circuit circuit, Modelled modelled, OffReadings readings) {
        this.circuit = circuit;
        this.modelled = modelled;
        this.readings = readings;
    }

    /**
     * Of a machine.
     *
     * @param circuit with all the bench's deeds done
     * @param arrangement with the power off
     */
    public static Solved<AtRest> of(Circuit circuit, Arrangement arrangement, Meter meter) {
        Modelled modelled = NetworkBuilder.build(circuit, arrangement.conditions());
        Solver solver = new Solver(modelled.network());
        Solved<OperatingPoint> solved = solver.operatingPoint(null);
        if (!(solved instanceof Solved.Found<OperatingPoint> found)) {
            return new Solved.Failed<>(((Solved.Failed<OperatingPoint>) solved).reason());
        }
        PeriodicSettings grid = PeriodicSettings.mains(circuit.mains().hertz().si());
        OffReadings readings = new OffReadings(
                modelled, solver, meter, found.value(), grid, Capacitance.all(circuit), /* follows= */ false);
        return new Solved.Found<>(new AtRest(circuit, modelled, readings.charged(arrangement.charged())));
    }

    /**
     * One check.
     *
     * @throws IllegalArgumentException where the circuit does not have its points
     */
    public Solved<Touched> take(Check check) {
        Solved<OffReadings.Taken> taken = readings.take(check, node(check.from()), node(check.to()));
        if (!(taken instanceof Solved.Found<OffReadings.Taken> found)) {
            return new Solved.Failed<>(((Solved.Failed<OffReadings.Taken>) taken).reason());
        }
        OffReadings.Taken t = found.value();
        return new Solved.Found<>(new Touched(t.reading(), t.volts(), t.amps(), t.state(), modelled));
    }

    /** The machine, all deeds done. */
    public Circuit circuit() {
        return circuit;
    }

    private int node(String point) {
        Net net = circuit.find(point).orElseThrow(() -> new IllegalArgumentException("no point " + point));
        return modelled.node(net);
    }

    /** A reading, and the circuit under the meter's source. */
    public static final class Touched {
        private final Reading reading;
        private final double meterVolts;
        private final double meterAmps;
        private final @Nullable OperatingPoint state;
        private final Modelled modelled;
        private final Map<String, Double> partAmps = new ConcurrentHashMap<>();

        Touched(
                Reading reading,
                double meterVolts,
                double meterAmps,
                @Nullable OperatingPoint state,
                Modelled modelled) {
            this.reading = reading;
            this.meterVolts = meterVolts;
            this.meterAmps = meterAmps;
            this.state = state;
            this.modelled = modelled;
        }

        /** What the meter shows. */
        public Reading reading() {
            return reading;
        }

        /** Across the leads [V]. */
        public double meterVolts() {
            return meterVolts;
        }

        /** Out of the red jack [A]. */
        public double meterAmps() {
            return meterAmps;
        }

        /** Largest current [A] of everything of a part or contact; infinite where it is not known. */
        public double partAmps(String part) {
            return partAmps.computeIfAbsent(part, this::largest);
        }

        private double largest(String part) {
            OperatingPoint point = state;
            double most = -1;
            if (point != null) {
                for (Map.Entry<String, String> current : modelled.currents().entrySet()) {
                    if (current.getKey().equals(part) || current.getKey().startsWith(part + ".")) {
                        most = Math.max(most, Math.abs(point.amps(current.getValue())));
                    }
                }
            }
            return most < 0 ? Double.POSITIVE_INFINITY : most;
        }

        /** Voltage [V] of one net against another; empty where it is not known. */
        public Optional<Double> volts(Net one, Net two) {
            OperatingPoint point = state;
            if (point == null
                    || !modelled.nodes().containsKey(one)
                    || !modelled.nodes().containsKey(two)) {
                return Optional.empty();
            }
            return Optional.of(point.volts(modelled.node(one), modelled.node(two)));
        }
    }
}
