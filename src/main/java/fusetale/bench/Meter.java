package fusetale.bench;

import fusetale.circuit.MeterFunction;
import fusetale.signal.Waveform;
import java.util.List;

/**
 * A multimeter as its sheet describes it. It picks its ranges by itself, red is the positive lead in ohms and diode test.
 *
 * @param name what to call it
 * @param trueRms whether a.c. volts are true r.m.s.; otherwise the rectified mean × 1.1107, which is right for a sine
 * @param alternatingCoupled whether a capacitor keeps steady voltage from the a.c. function
 * @param inputOhms input resistance in volts [ohm]; part of the circuit while measuring
 * @param leadOhms both test leads together [ohm]
 * @param directRanges ranges of d.c. volts, rising
 * @param alternatingRanges ranges of a.c. volts, rising
 * @param ohmsRanges ranges of ohms, rising
 * @param diodeTest the diode test
 */
public record Meter(
        String name,
        boolean trueRms,
        boolean alternatingCoupled,
        double inputOhms,
        double leadOhms,
        List<MeterRange> directRanges,
        List<MeterRange> alternatingRanges,
        List<OhmsRange> ohmsRanges,
        DiodeTest diodeTest) {
    /** Copies the lists. */
    public Meter {
        directRanges = List.copyOf(directRanges);
        alternatingRanges = List.copyOf(alternatingRanges);
        ohmsRanges = List.copyOf(ohmsRanges);
        if (directRanges.isEmpty() || alternatingRanges.isEmpty() || ohmsRanges.isEmpty()) {
            throw new IllegalArgumentException(name + " needs at least one range for each function");
        }
    }

    /**
     * A range of ohms: what stands behind the leads, and how the result is shown.
     *
     * @param display range and accuracy
     * @param openVolts voltage of the open leads [V]
     * @param shortAmps current through shorted leads [A]
     */
    public record OhmsRange(MeterRange display, double openVolts, double shortAmps) {
        /** Resistance behind the jacks [ohm]. */
        public double sourceOhms() {
            return openVolts / shortAmps;
        }
    }

    /**
     * The diode test: voltage across the leads.
     *
     * @param display range and accuracy; above its full scale the meter shows OL
     * @param openVolts voltage of the open leads [V]
     * @param sourceOhms resistance behind the jacks [ohm]
     */
    public record DiodeTest(MeterRange display, double openVolts, double sourceOhms) {}

    /**
     * A good hand-held meter of today: 4000 counts, true r.m.s., a.c.-coupled, 10 MΩ. Accuracy ±(0.5 % + 2) d.c., ±(1 % + 5)
     * a.c., ±(0.8 % + 2) ohms, ±(1 % + 2) in megohms, ±(1 % + 3) diode test: the middle of what sheets of that class state.
     * Diode test 3 V open and 1 mA at 0.5 V; ohms 1 mA from 3.2 V on the lowest range, above it from 0.45 V, which does not
     * turn silicon on.
     */
    public static Meter trueRms4000() {
        return new Meter(
                "true rms 4000-count",
                true,
                true,
                10e6,
                0.2,
                List.of(
                        new MeterRange(0.3999, 1e-4, 0.005, 2),
                        new MeterRange(3.999, 1e-3, 0.005, 2),
                        new MeterRange(39.99, 1e-2, 0.005, 2),
                        new MeterRange(399.9, 0.1, 0.005, 2),
                        new MeterRange(1000, 1, 0.005, 2)),
                List.of(
                        new MeterRange(3.999, 1e-3, 0.01, 5),
                        new MeterRange(39.99, 1e-2, 0.01, 5),
                        new MeterRange(399.9, 0.1, 0.01, 5),
                        new MeterRange(750, 1, 0.01, 5)),
                List.of(
                        new OhmsRange(new MeterRange(399.9, 0.1, 0.008, 2), 3.2, 1e-3),
                        new OhmsRange(new MeterRange(3999, 1, 0.008, 2), 0.45, 1e-4),
                        new OhmsRange(new MeterRange(39.99e3, 10, 0.008, 2), 0.45, 1e-5),
                        new OhmsRange(new MeterRange(399.9e3, 100, 0.008, 2), 0.45, 1e-6),
                        new OhmsRange(new MeterRange(3.999e6, 1e3, 0.01, 2), 0.45, 1e-7),
                        new OhmsRange(new MeterRange(39.99e6, 10e3, 0.01, 2), 0.45, 1e-8)),
                new DiodeTest(new MeterRange(2.0, 1e-3, 0.01, 3), 3, 2500));
    }

    /**
     * A cheap 3½-digit meter: average-responding, a.c.-coupled, 10 MΩ. Accuracy ±(0.5 % + 2) d.c., ±(1.2 % + 10) a.c.,
     * ±(0.8 % + 2) ohms, ±(1 % + 2) in megohms.
     */
    public static Meter averageResponding() {
        return new Meter(
                "average-responding 3½ digit",
                false,
                true,
                10e6,
                0.2,
                List.of(
                        new MeterRange(0.1999, 1e-4, 0.005, 2),
                        new MeterRange(1.999, 1e-3, 0.005, 2),
                        new MeterRange(19.99, 1e-2, 0.005, 2),
                        new MeterRange(199.9, 0.1, 0.005, 2),
                        new MeterRange(1000, 1, 0.005, 2)),
                List.of(
                        new MeterRange(1.999, 1e-3, 0.012, 10),
                        new MeterRange(19.99, 1e-2, 0.012, 10),
                        new MeterRange(199.9, 0.1, 0.012, 10),
                        new MeterRange(750, 1, 0.012, 10)),
                List.of(
                        new OhmsRange(new MeterRange(199.9, 0.1, 0.008, 2), 3.2, 1e-3),
                        new OhmsRange(new MeterRange(1999, 1, 0.008, 2), 0.3, 1e-4),
                        new OhmsRange(new MeterRange(19.99e3, 10, 0.008, 2), 0.3, 1e-5),
                        new OhmsRange(new MeterRange(199.9e3, 100, 0.008, 2), 0.3, 1e-6),
                        new OhmsRange(new MeterRange(1.999e6, 1e3, 0.01, 2), 0.3, 1e-7),
                        new OhmsRange(new MeterRange(19.99e6, 10e3, 0.01, 2), 0.3, 1e-8)),
                new DiodeTest(new MeterRange(1.999, 1e-3, 0.01, 3), 3, 2500));
    }

    /** The built-in meters. */
    public static List<Meter> builtIn() {
        return List.of(trueRms4000(), averageResponding());
    }

    /**
     * What a voltage function makes of a voltage over time [V].
     *
     * @throws IllegalArgumentException where the function is not one of volts
     */
    public double volts(MeterFunction function, Waveform volts) {
        return switch (function) {
            case DC_VOLTS -> volts.mean();
            case AC_VOLTS -> alternating(volts);
            case OHMS, DIODE_TEST -> throw new IllegalArgumentException(function.words() + " is no voltage function");
        };
    }

    private double alternating(Waveform volts) {
        if (trueRms) {
            return alternatingCoupled ? volts.alternatingRms() : volts.rms();
        }
        double mean = alternatingCoupled ? volts.alternatingRectifiedMean() : volts.rectifiedMean();
        return Waveform.SINE_FORM_FACTOR * mean;
    }

    /** The reading of a voltage in the range the meter picks. */
    Reading voltsReading(Check check, double volts) {
        return picked(check, volts).reading(check, volts);
    }

    private MeterRange picked(Check check, double value) {
        List<MeterRange> ranges = check.function() == MeterFunction.DC_VOLTS ? directRanges : alternatingRanges;
        for (MeterRange range : ranges) {
            if (range.holds(value)) {
                return range;
            }
        }
        return ranges.get(ranges.size() - 1);
    }
}
