package fusetale.bench;

import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.mna.Norton;
import fusetale.mna.OperatingPoint;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.model.Modelled;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.List;

/** Readings of a machine that is switched off: the meter is the only source but a battery. One use, one thread. */
final class OffReadings {
    /** A voltage [V] that stands across the leads without the meter, from which on ohms mean little. */
    private static final double FALSIFIES_VOLTS = 0.01;
    /** How long [s] a repairer waits for a display to settle. */
    private static final double PATIENCE_SECONDS = 3;

    private final Circuit circuit;
    private final Modelled modelled;
    private final Solver solver;
    private final Meter meter;
    private final OperatingPoint rest;
    private final List<String> remarks = new ArrayList<>();

    OffReadings(Circuit circuit, Modelled modelled, Solver solver, Meter meter, OperatingPoint rest) {
        this.circuit = circuit;
        this.modelled = modelled;
        this.solver = solver;
        this.meter = meter;
        this.rest = rest;
    }

    /**
     * A reading with the voltage that stands across the leads [V].
     *
     * @param reading what the meter shows
     * @param volts across the leads, red against black
     */
    record Taken(Reading reading, double volts) {}

    /** What was noticed on the way. */
    List<String> remarks() {
        return remarks;
    }

    Solved<Taken> take(Check check, int one, int two) {
        return switch (check.function()) {
            case DC_VOLTS, AC_VOLTS -> volts(check, one, two);
            case OHMS -> ohms(check, one, two);
            case DIODE_TEST -> diodeTest(check, one, two);
        };
    }

    private Solved<Taken> volts(Check check, int one, int two) {
        Solved<OperatingPoint> solved = one == two
                ? new Solved.Found<>(rest)
                : solver.with(new Norton(one, two, 1 / meter.inputOhms(), 0)).operatingPoint(rest);
        if (!(solved instanceof Solved.Found<OperatingPoint> found)) {
            return new Solved.Failed<>(((Solved.Failed<OperatingPoint>) solved).reason());
        }
        double volts = found.value().volts(one, two);
        double shown = meter.volts(check.function(), Waveform.steady(volts));
        return new Solved.Found<>(new Taken(meter.voltsReading(check, shown), volts));
    }

    private Solved<Taken> ohms(Check check, int one, int two) {
        warnOfVoltage(check, one, two);
        List<Meter.OhmsRange> ranges = meter.ohmsRanges();
        int k = 0;
        while (true) {
            Meter.OhmsRange range = ranges.get(k);
            Solved<Fed> fed = fed(one, two, range.openVolts(), range.sourceOhms());
            if (!(fed instanceof Solved.Found<Fed> found)) {
                return new Solved.Failed<>(((Solved.Failed<Fed>) fed).reason());
            }
            Fed at = found.value();
            double ohms = at.amps() > 0 ? at.volts() / at.amps() : Double.POSITIVE_INFINITY;
            boolean last = k == ranges.size() - 1;
            if (range.display().holds(ohms) || last) {
                warnOfCharging(check, at, range.shortAmps());
                boolean over = !range.display().holds(ohms) || ohms < 0;
                double value = over ? range.display().fullScale() : ohms;
                Reading reading = over
                        ? new Reading(check, value, true, "OL", range.display().halfWidth(value))
                        : range.display().reading(check, value);
                return new Solved.Found<>(new Taken(reading, at.volts()));
            }
            k = next(ranges, k, ohms);
        }
    }

    /** The lowest range above k that would hold the value, the last where none does. */
    private static int next(List<Meter.OhmsRange> ranges, int k, double ohms) {
        int next = k + 1;
        while (next < ranges.size() - 1 && !ranges.get(next).display().holds(ohms)) {
            next++;
        }
        return next;
    }

    private Solved<Taken> diodeTest(Check check, int one, int two) {
        warnOfVoltage(check, one, two);
        Meter.DiodeTest test = meter.diodeTest();
        Solved<Fed> fed = fed(one, two, test.openVolts(), test.sourceOhms());
        if (!(fed instanceof Solved.Found<Fed> found)) {
            return new Solved.Failed<>(((Solved.Failed<Fed>) fed).reason());
        }
        warnOfCharging(check, found.value(), test.openVolts() / test.sourceOhms());
        double volts = found.value().volts();
        return new Solved.Found<>(new Taken(test.display().reading(check, volts), volts));
    }

    /**
     * The meter's source across the points.
     *
     * @param point the machine with it
     * @param volts at the jacks, lead resistance included [V]
     * @param amps out of the red jack [A]
     */
    private record Fed(OperatingPoint point, double volts, double amps) {}

    private Solved<Fed> fed(int one, int two, double openVolts, double sourceOhms) {
        double ohms = sourceOhms + meter.leadOhms();
        if (one == two) {
            double amps = openVolts / ohms;
            return new Solved.Found<>(new Fed(rest, amps * meter.leadOhms(), amps));
        }
        Norton source = new Norton(one, two, 1 / ohms, openVolts / ohms);
        Solved<OperatingPoint> solved = solver.with(source).operatingPoint(rest);
        if (!(solved instanceof Solved.Found<OperatingPoint> found)) {
            return new Solved.Failed<>(((Solved.Failed<OperatingPoint>) solved).reason());
        }
        double across = found.value().volts(one, two);
        double amps = (openVolts - across) / ohms;
        return new Solved.Found<>(new Fed(found.value(), across + amps * meter.leadOhms(), amps));
    }

    private void warnOfVoltage(Check check, int one, int two) {
        double volts = rest.volts(one, two);
        if (Math.abs(volts) > FALSIFIES_VOLTS) {
            remarks.add(String.format(
                    java.util.Locale.ROOT,
                    "%s to %s: %.2f V stand there with the plug out (a battery?); ohms and diode test mislead",
                    check.from(),
                    check.to(),
                    volts));
        }
    }

    /**
     * Charge that the meter must bring into the capacitors, ΣC·ΔV, over the mean of its current at the start and at the
     * end: an estimate of the time to settle, on the short side where a load beside the capacitor takes its share.
     */
    private void warnOfCharging(Check check, Fed fed, double shortAmps) {
        double coulombs = 0;
        for (Part part : circuit.parts()) {
            if (part instanceof Electrolytic c) {
                coulombs += c.farads().si() * moved(fed, c.plus(), c.minus());
            } else if (part instanceof Capacitor c) {
                coulombs += c.farads().si() * moved(fed, c.one(), c.two());
            }
        }
        double meanAmps = (shortAmps + Math.max(fed.amps(), 0)) / 2;
        if (coulombs > PATIENCE_SECONDS * meanAmps) {
            String words = check.function() == MeterFunction.OHMS ? "ohms" : "diode test";
            remarks.add(check.from() + " to " + check.to() + ", " + words
                    + ": a capacitor charges through the meter; still climbing after 3 s, the settled value is shown");
        }
    }

    private double moved(Fed fed, Net plus, Net minus) {
        int one = modelled.node(plus);
        int two = modelled.node(minus);
        return Math.abs(fed.point().volts(one, two) - rest.volts(one, two));
    }
}
