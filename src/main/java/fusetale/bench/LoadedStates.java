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

    Solved<Waveform> volts(int one, int two, BooleanSupplier stopped) {
        long pair = (long) one << 32 | two;
        Waveform ready = known.get(pair);
        if (ready != null) {
            return new Solved.Found<>(ready);
        }
        PeriodicState state = bare;
        if (loading.matters(one, two)) {
            Solved<PeriodicState> solved =
                    solver.with(new Norton(one, two, 1 / meter.inputOhms(), 0)).periodicState(settings, bare, stopped);
            if (!(solved instanceof Solved.Found<PeriodicState> found)) {
                return new Solved.Failed<>(((Solved.Failed<PeriodicState>) solved).reason());
            }
            state = found.value();
        }
        Waveform volts = state.volts(one, two);
        known.put(pair, volts);
        return new Solved.Found<>(volts);
    }
}
