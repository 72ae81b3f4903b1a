package fusetale.bench;

import fusetale.mna.Norton;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/** Voltages over a cycle with the meter's input across the points, solved again only where it matters. */
final class LoadedStates {
    private static final double LOST_RATIO = 2e-4;
    /** A loss below this part of the meter's own accuracy does not matter either. */
    private static final double ACCURACY_RATIO = 0.1;

    private final Solver solver;
    private final Meter meter;
    private final Loading loading;
    private final PeriodicSettings settings;
    private final PeriodicState bare;
    private final List<Known> known = new ArrayList<>();

    LoadedStates(Solver solver, Meter meter, Loading loading, PeriodicSettings settings, PeriodicState bare) {
        this.solver = solver;
        this.meter = meter;
        this.loading = loading;
        this.settings = settings;
        this.bare = bare;
    }

    /**
     * Voltage under the leads of a check: without the meter where it would change the reading by less than 0.02 % or less
     * than a tenth of the meter's accuracy.
     */
    Solved<Waveform> volts(Check check, int one, int two, BooleanSupplier stopped) {
        Waveform without = bare.volts(one, two);
        Reading reading = meter.voltsReading(check, meter.volts(check.function(), without));
        double value = Math.abs(reading.value());
        double allowed = Math.max(LOST_RATIO * value, ACCURACY_RATIO * reading.halfWidth());
        if (loading.lostRatio(one, two) * value < allowed || nearKnown(one, two, value, allowed)) {
            return new Solved.Found<>(without);
        }
        for (Known k : known) {
            if (k.one() == one && k.two() == two) {
                return new Solved.Found<>(k.volts());
            }
        }
        Solved<PeriodicState> solved =
                solver.with(new Norton(one, two, 1 / meter.inputOhms(), 0)).periodicState(settings, bare, stopped);
        if (!(solved instanceof Solved.Found<PeriodicState> found)) {
            return new Solved.Failed<>(((Solved.Failed<PeriodicState>) solved).reason());
        }
        Waveform volts = found.value().volts(one, two);
        double lost = Math.max(Math.abs(volts.mean() - without.mean()), Math.abs(volts.rms() - without.rms()));
        known.add(new Known(one, two, volts, lost));
        return new Solved.Found<>(volts);
    }

    /**
     * Whether a point close by is known to lose little under the meter: at rest the resistance of a rail looks high, its
     * rectifiers being off; once one point of it has been solved, the others, a coil or a fuse away, need not be.
     */
    private boolean nearKnown(int one, int two, double value, double allowed) {
        for (Known k : known) {
            if (k.two() == two && k.one() != one && k.lostVolts() < allowed) {
                double between = loading.lostRatio(one, k.one()) * value;
                if (k.lostVolts() + between < allowed) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * A pair of points solved with the meter across it.
     *
     * @param one node under the red lead
     * @param two node under the black lead
     * @param volts voltage between them
     * @param lostVolts what the meter took away, of mean or r.m.s.
     */
    private record Known(int one, int two, Waveform volts, double lostVolts) {}
}
