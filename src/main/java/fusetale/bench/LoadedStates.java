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

/** Voltages and currents over a cycle with the meter in the circuit, solved again only where it matters. */
final class LoadedStates {
    private static final double LOST_RATIO = 2e-4;
    /** A loss below this part of the meter's own accuracy does not matter either. */
    private static final double ACCURACY_RATIO = 0.1;

    private final Solver solver;
    private final Meter meter;
    private final Loading loading;
    private final PeriodicSettings settings;
    private final Bare bare;
    private final double lostRatio;
    private final List<Known> known = new ArrayList<>();

    LoadedStates(Solver solver, Meter meter, Loading loading, PeriodicSettings settings, Bare bare) {
        this(solver, meter, loading, settings, bare, LOST_RATIO);
    }

    /** The same with another share of a reading that may be lost unseen. */
    LoadedStates(Solver solver, Meter meter, Loading loading, PeriodicSettings settings, Bare bare, double lostRatio) {
        this.lostRatio = lostRatio;
        this.solver = solver;
        this.meter = meter;
        this.loading = loading;
        this.settings = settings;
        this.bare = bare;
    }

    /**
     * The machine without a meter.
     *
     * @param state where a solve with the meter starts
     * @param curves the same, for its voltages
     */
    record Bare(PeriodicState state, PeriodicState curves) {}

    /**
     * A reading with what it was taken from.
     *
     * @param reading what the meter shows
     * @param wave the voltage [V] under the leads, or the current [A] through the meter
     */
    record Taken(Reading reading, Waveform wave) {}

    /**
     * Voltage under the leads of a check: without the meter where it would change the reading by less than 0.02 % or less
     * than a tenth of the meter's accuracy. Where the input depends on the range, one turns down as long as the next lower
     * range holds what is left.
     */
    Solved<Waveform> volts(Check check, int one, int two, BooleanSupplier stopped) {
        Waveform wave = bare.curves().volts(one, two);
        MeterRange range = picked(check, wave);
        while (true) {
            double inputOhms = meter.inputOhms(check.function(), range);
            Solved<Waveform> solved = volts(check, one, two, inputOhms, stopped);
            if (!(solved instanceof Solved.Found<Waveform> found)) {
                return solved;
            }
            MeterRange lower = picked(check, found.value());
            if (lower.fullScale() >= range.fullScale() || meter.inputOhms(check.function(), lower) == inputOhms) {
                return solved;
            }
            range = lower;
        }
    }

    private MeterRange picked(Check check, Waveform wave) {
        return meter.picked(check.function(), meter.volts(check.function(), wave));
    }

    private Solved<Waveform> volts(Check check, int one, int two, double inputOhms, BooleanSupplier stopped) {
        Waveform without = bare.curves().volts(one, two);
        Reading reading = meter.voltsReading(check, meter.volts(check.function(), without));
        double value = Math.abs(reading.value());
        double allowed = Math.max(lostRatio * value, ACCURACY_RATIO * reading.halfWidth());
        if (loading.lostRatio(one, two, inputOhms) * value < allowed
                || nearKnown(one, two, inputOhms, value, allowed)) {
            return new Solved.Found<>(without);
        }
        for (Known k : known) {
            if (k.one() == one && k.two() == two && k.inputOhms() == inputOhms) {
                return new Solved.Found<>(k.volts());
            }
        }
        Solved<Waveform> solved = across(one, two, inputOhms, stopped);
        if (solved instanceof Solved.Found<Waveform> found) {
            Waveform volts = found.value();
            double lost = Math.max(Math.abs(volts.mean() - without.mean()), Math.abs(volts.rms() - without.rms()));
            known.add(new Known(one, two, inputOhms, volts, lost));
        }
        return solved;
    }

    private Solved<Waveform> across(int one, int two, double ohms, BooleanSupplier stopped) {
        if (one == two) {
            return new Solved.Found<>(Waveform.steady(0));
        }
        Solved<PeriodicState> solved =
                solver.with(new Norton(one, two, 1 / ohms, 0)).periodicState(settings, bare.state(), stopped);
        if (!(solved instanceof Solved.Found<PeriodicState> found)) {
            return new Solved.Failed<>(((Solved.Failed<PeriodicState>) solved).reason());
        }
        return new Solved.Found<>(found.value().volts(one, two));
    }

    /**
     * Current through the meter, which closes the gap between two points: from the highest range down as long as the next
     * lower one, whose burden is larger, would hold it.
     */
    Solved<Taken> amps(Check check, int one, int two, BooleanSupplier stopped) {
        List<Meter.AmpsRange> ranges = meter.ampsRanges();
        int k = ranges.size() - 1;
        while (true) {
            Meter.AmpsRange range = ranges.get(k);
            Solved<Waveform> solved =
                    across(one, two, range.burdenOhms() + meter.model().leadOhms(), stopped);
            if (!(solved instanceof Solved.Found<Waveform> found)) {
                return new Solved.Failed<>(((Solved.Failed<Waveform>) solved).reason());
            }
            double ohms = range.burdenOhms() + meter.model().leadOhms();
            double amps = found.value().mean() / ohms;
            // the meter's own fuse goes by r.m.s., whatever the display makes of it
            if (k == 0 || !ranges.get(k - 1).display().holds(found.value().rms() / ohms)) {
                return new Solved.Found<>(new Taken(meter.ampsReading(check, range, amps), found.value()));
            }
            k--;
        }
    }

    /**
     * Whether a point close by is known to lose little under the meter: at rest the resistance of a rail looks high, its
     * rectifiers being off; once one point of it has been solved, the others, a coil or a fuse away, need not be.
     */
    private boolean nearKnown(int one, int two, double inputOhms, double value, double allowed) {
        for (Known k : known) {
            if (k.two() == two && k.one() != one && k.inputOhms() <= inputOhms && k.lostVolts() < allowed) {
                double between = loading.lostRatio(one, k.one(), inputOhms) * value;
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
     * @param inputOhms input resistance of the meter [ohm]
     * @param volts voltage between them
     * @param lostVolts what the meter took away, of mean or r.m.s.
     */
    private record Known(int one, int two, double inputOhms, Waveform volts, double lostVolts) {}
}
