package fusetale.bench;

import fusetale.mna.Norton;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.signal.Waveform;
import java.util.HashMap;
import java.util.Map;
import java.util.function.BooleanSupplier;

/** Voltages over a cycle with the meter's input across the points, solved again only where it matters. */
final class LoadedStates {
    private static final double LOST_RATIO = 2e-4;

    private final Solver solver;
    private final Meter meter;
    private final Loading loading;
    private final PeriodicSettings settings;
    private final PeriodicState bare;
    private final Map<Long, Waveform> known = new HashMap<>();

    LoadedStates(Solver solver, Meter meter, Loading loading, PeriodicSettings settings, PeriodicState bare) {
        this.solver = solver;
        this.meter = meter;
        this.loading = loading;
        this.settings = settings;
        this.bare = bare;
    }

    /**
     * Voltage under the leads of a check: without the meter where it would change the reading by less than 0.02 % or less
     * than half of the last digit shown.
     */
    Solved<Waveform> volts(Check check, int one, int two, BooleanSupplier stopped) {
        Waveform without = bare.volts(one, two);
        Reading reading = meter.voltsReading(check, meter.volts(check.function(), without));
        double lost = loading.lostRatio(one, two);
        if (lost < LOST_RATIO || lost * Math.abs(reading.value()) < meter.resolution(check, reading.value()) / 2) {
            return new Solved.Found<>(without);
        }
        long pair = (long) one << 32 | two;
        Waveform ready = known.get(pair);
        if (ready != null) {
            return new Solved.Found<>(ready);
        }
        Solved<PeriodicState> solved =
                solver.with(new Norton(one, two, 1 / meter.inputOhms(), 0)).periodicState(settings, bare, stopped);
        if (!(solved instanceof Solved.Found<PeriodicState> found)) {
            return new Solved.Failed<>(((Solved.Failed<PeriodicState>) solved).reason());
        }
        Waveform volts = found.value().volts(one, two);
        known.put(pair, volts);
        return new Solved.Found<>(volts);
    }
}
