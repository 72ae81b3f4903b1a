package fusetale.explore;

import fusetale.aftermath.Surge;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.Run;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.model.Modelled;
import fusetale.model.NetworkBuilder;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * What currents do when a machine is switched on: runs from rest, capacitors empty and lamps cold, the mains closing at
 * {@value #MOMENTS} moments of its cycle, and once more between the worst of these and its neighbours where the peak lies
 * (the vertex of the parabola through the three). The core is linear: its own inrush is not in it.
 */
final class SwitchOn {
    /** Moments of the cycle that are tried first. */
    private static final int MOMENTS = 12;

    /**
     * Length of a run [cycles]. What closes half a cycle later than the worst moment of a half-wave rectifier is worth nothing,
     * and the pulse that begins with the mains on, or when it next rises through zero, is over after one.
     */
    private static final double CYCLES = 1;

    private final Modelled modelled;
    private final PeriodicSettings settings;
    private final List<String> currents;
    private final BooleanSupplier stopped;
    private final Map<String, Surge> worst = new HashMap<>();

    private SwitchOn(Modelled modelled, double hertz, List<String> currents, BooleanSupplier stopped) {
        this.modelled = modelled;
        this.settings = PeriodicSettings.mains(hertz);
        this.currents =
                currents.stream().filter(c -> modelled.element(c).isPresent()).toList();
        this.stopped = stopped;
    }

    /**
     * The worst of each current, by its name; one that the machine does not have, or whose runs could not be worked out, is
     * missing.
     */
    static Map<String, Surge> of(Machine machine, List<String> currents, BooleanSupplier stopped) {
        Modelled modelled =
                NetworkBuilder.build(machine.arranged(), machine.bare().conditions());
        double hertz = machine.arranged().mains().hertz().si();
        SwitchOn switchOn = new SwitchOn(modelled, hertz, currents, stopped);
        if (!switchOn.currents.isEmpty()) {
            switchOn.search();
        }
        return switchOn.worst;
    }

    private void search() {
        double[] peaks = new double[MOMENTS];
        int best = 0;
        for (int k = 0; k < MOMENTS; k++) {
            peaks[k] = closing(radians(k));
            best = peaks[k] > peaks[best] ? k : best;
        }
        double before = peaks[(best + MOMENTS - 1) % MOMENTS];
        double after = peaks[(best + 1) % MOMENTS];
        double bend = before - 2 * peaks[best] + after;
        if (bend < 0) {
            closing(radians(best + 0.5 * (before - after) / bend));
        }
    }

    private static double radians(double moment) {
        return 2 * Math.PI * moment / MOMENTS;
    }

    /** Tries one moment; returns the highest of all currents [A], 0 where it could not be worked out. */
    private double closing(double phaseRadians) {
        if (stopped.getAsBoolean()) {
            return 0;
        }
        Solved<Run> solved = new Solver(modelled.closingAt(phaseRadians)).run(settings, CYCLES * settings.period());
        if (!(solved instanceof Solved.Found<Run> found)) {
            return 0;
        }
        double highest = 0;
        for (String name : currents) {
            Surge surge = Surge.of(found.value().amps(modelled.element(name).orElseThrow()), settings.period() / 2);
            worst.merge(name, surge, Surge::or);
            highest = Math.max(highest, surge.peakAmps());
        }
        return highest;
    }
}
