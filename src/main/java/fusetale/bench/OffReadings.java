package fusetale.bench;

import fusetale.circuit.MeterFunction;
import fusetale.circuit.MeterModel;
import fusetale.mna.Norton;
import fusetale.mna.OperatingPoint;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.Run;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.model.Modelled;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Readings of a machine that is switched off: the meter is the only source but a battery and what capacitors still hold. One
 * use, one thread.
 *
 * <p>A reading settles at the state at rest with the meter's source across the points. Where a capacitor must be charged or
 * discharged for that, the circuit is followed from the moment the leads touch for {@link Climbing#AFTER_SECONDS}.
 */
final class OffReadings {
    /** A voltage [V] that stands across the leads without the meter, from which on ohms mean little. */
    private static final double FALSIFIES_VOLTS = 0.01;
    /**
     * Where the meter's current would bring the charge in less than this part of the time waited, nothing is left to climb:
     * e^-8 of the way is.
     */
    private static final double SETTLED_RATIO = 1.0 / 8;

    private final Modelled modelled;
    private final Solver solver;
    private final Meter meter;
    private final OperatingPoint rest;
    private final PeriodicSettings grid;
    private final List<Capacitance> capacitances;
    private final Map<String, Double> chargedVolts = new LinkedHashMap<>();
    private final boolean follows;
    private final Set<String> remarks = new LinkedHashSet<>();
    private @Nullable Run untouched;

    /**
     * Of one machine at rest.
     *
     * @param rest the state at rest, nothing charged but by batteries
     * @param grid accuracy and steps of what is followed in time
     * @param follows whether displays that climb are followed where nothing was charged beforehand
     */
    OffReadings(
            Modelled modelled,
            Solver solver,
            Meter meter,
            OperatingPoint rest,
            PeriodicSettings grid,
            List<Capacitance> capacitances,
            boolean follows) {
        this.modelled = modelled;
        this.solver = solver;
        this.meter = meter;
        this.rest = rest;
        this.grid = grid;
        this.capacitances = List.copyOf(capacitances);
        this.follows = follows;
    }

    /** Charges capacitors before the leads touch; names that are not there hold nothing. */
    OffReadings charged(Map<String, Double> volts) {
        for (Capacitance c : capacitances) {
            Double held = volts.get(c.part());
            if (held != null) {
                chargedVolts.put(c.element(), held);
            }
        }
        return this;
    }

    /**
     * A reading with the voltage that stands across the leads [V].
     *
     * @param reading what the meter shows
     * @param volts across the leads, red against black
     * @param state the machine with the meter's source across it; null where it moves
     * @param amps out of the red jack
     */
    record Taken(Reading reading, double volts, @Nullable OperatingPoint state, double amps) {}

    /** What was noticed on the way. */
    Set<String> remarks() {
        return remarks;
    }

    /**
     * What the meter is in a function and range: a source behind a resistance.
     *
     * @param openVolts voltage of the open jacks, red against black [V]
     * @param sourceOhms resistance behind them [ohm]
     * @param shown the display of a voltage [V] at the jacks and a current [A] out of the red jack
     */
    private record Instrument(double openVolts, double sourceOhms, Display shown) {}

    /** Makes a reading of what stands at the jacks. */
    @FunctionalInterface
    private interface Display {
        Reading of(double volts, double amps);
    }

    Solved<Taken> take(Check check, int one, int two) {
        if (!check.function().ofVolts()) {
            warnOfVoltage(check, one, two);
        }
        return switch (check.function()) {
            case DC_VOLTS, AC_VOLTS -> volts(check, one, two);
            case OHMS -> ohms(check, one, two);
            case DIODE_TEST -> {
                MeterModel.DiodeTest test = Objects.requireNonNull(meter.model().diodeTest());
                yield inRanges(
                        one,
                        two,
                        List.of(new Instrument(
                                test.openVolts(),
                                test.openVolts() / test.shortAmps(),
                                (volts, amps) -> meter.diodeReading(check, test, volts))));
            }
            case CONTINUITY -> {
                MeterModel.Continuity buzzer =
                        Objects.requireNonNull(meter.model().continuity());
                yield inRanges(
                        one,
                        two,
                        List.of(new Instrument(
                                buzzer.openVolts(),
                                buzzer.openVolts() / buzzer.shortAmps(),
                                (volts, amps) -> Meter.buzzerReading(
                                        check, buzzer, amps > 0 ? volts / amps : Double.POSITIVE_INFINITY))));
            }
            case DC_AMPS ->
                inRanges(
                        one,
                        two,
                        meter.ampsRanges().stream()
                                .map(r -> new Instrument(
                                        0, r.burdenOhms(), (volts, amps) -> meter.ampsReading(check, r, -amps)))
                                .toList());
        };
    }

    private Solved<Taken> volts(Check check, int one, int two) {
        List<MeterRange> ranges = switch (check.function()) {
            case DC_VOLTS -> meter.directRanges();
            default -> meter.alternatingRanges();
        };
        MeterRange range = ranges.get(ranges.size() - 1);
        while (true) {
            double inputOhms = meter.inputOhms(check.function(), range);
            Instrument input = new Instrument(
                    0,
                    inputOhms,
                    (volts, amps) -> meter.voltsReading(check, meter.volts(check.function(), Waveform.steady(volts))));
            Solved<Taken> solved = inRanges(one, two, List.of(input));
            if (!(solved instanceof Solved.Found<Taken> found)) {
                return solved;
            }
            MeterRange lower =
                    meter.picked(check.function(), found.value().reading().value());
            if (lower.fullScale() >= range.fullScale() || meter.inputOhms(check.function(), lower) == inputOhms) {
                return solved;
            }
            range = lower;
        }
    }

    private Solved<Taken> ohms(Check check, int one, int two) {
        boolean redPositive = meter.model().ohms().redPositive();
        List<Instrument> ranges = new ArrayList<>();
        for (Meter.OhmsRange range : meter.ohmsRanges()) {
            // the zero knob of a needle takes the leads out; the middle of its scale is all that stands behind the
            // points
            double circuitOhms = range.sourceOhms() + meter.model().leadOhms();
            double openVolts = redPositive ? range.openVolts() : -range.openVolts();
            ranges.add(new Instrument(
                    openVolts,
                    range.sourceOhms(),
                    (volts, amps) -> redPositive
                            ? meter.ohmsReading(check, range, volts, amps, circuitOhms)
                            : meter.ohmsReading(check, range, -volts, -amps, circuitOhms)));
        }
        return meter.analogue() ? nearestTheMiddle(one, two, ranges) : inRanges(one, two, ranges);
    }

    /** Turns up until a range holds the value; what settles and what is seen meanwhile each in the range that holds it. */
    private Solved<Taken> inRanges(int one, int two, List<Instrument> ranges) {
        for (int k = 0; ; k++) {
            Solved<At> settled = settled(one, two, ranges.get(k));
            if (!(settled instanceof Solved.Found<At> found)) {
                return new Solved.Failed<>(((Solved.Failed<At>) settled).reason());
            }
            if (!found.value().reading().overRange() || k == ranges.size() - 1) {
                return followed(one, two, ranges, k, found.value());
            }
        }
    }

    private Solved<Taken> nearestTheMiddle(int one, int two, List<Instrument> ranges) {
        int best = 0;
        At nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < ranges.size(); k++) {
            Meter.OhmsRange range = meter.ohmsRanges().get(k);
            Solved<At> settled = settled(one, two, ranges.get(k));
            if (!(settled instanceof Solved.Found<At> found)) {
                return new Solved.Failed<>(((Solved.Failed<At>) settled).reason());
            }
            double circuitOhms = range.sourceOhms() + meter.model().leadOhms();
            double from = Meter.fromTheMiddle(range, Math.abs(found.value().amps()), circuitOhms);
            if (nearest == null || from < least) {
                least = from;
                nearest = found.value();
                best = k;
            }
        }
        return followed(one, two, List.of(ranges.get(best)), 0, Objects.requireNonNull(nearest));
    }

    /**
     * A state with the meter's source across the points.
     *
     * @param reading what the meter makes of it
     * @param point the machine with it; null where it is not a state at rest
     * @param across voltage between the points [V]
     * @param amps out of the red jack [A]
     */
    private record At(Reading reading, @Nullable OperatingPoint point, double across, double amps) {}

    private Solved<At> settled(int one, int two, Instrument meterAs) {
        double ohms = behind(meterAs);
        if (one == two) {
            return new Solved.Found<>(at(meterAs, rest, 0));
        }
        Norton source = new Norton(one, two, 1 / ohms, meterAs.openVolts() / ohms);
        Solved<OperatingPoint> solved = solver.with(source).operatingPoint(rest);
        if (!(solved instanceof Solved.Found<OperatingPoint> found)) {
            return new Solved.Failed<>(((Solved.Failed<OperatingPoint>) solved).reason());
        }
        return new Solved.Found<>(at(meterAs, found.value(), found.value().volts(one, two)));
    }

    private At at(Instrument meterAs, @Nullable OperatingPoint point, double across) {
        double amps = (meterAs.openVolts() - across) / behind(meterAs);
        return new At(meterAs.shown().of(across + amps * leadOhms(meterAs), amps), point, across, amps);
    }

    private double behind(Instrument meterAs) {
        return meterAs.sourceOhms() + leadOhms(meterAs);
    }

    /** Beside an input of megohms the leads are nothing. */
    private double leadOhms(Instrument meterAs) {
        boolean voltmeter = meterAs.openVolts() == 0 && meterAs.sourceOhms() > 1e4;
        return voltmeter ? 0 : meter.model().leadOhms();
    }

    /** The settled reading, beside what the display shows meanwhile where that is something else. */
    private Solved<Taken> followed(int one, int two, List<Instrument> ranges, int k, At settled) {
        Taken still = new Taken(settled.reading(), settled.across(), settled.point(), settled.amps());
        boolean charged = !chargedVolts.isEmpty();
        boolean moves = takesLong(settled, ranges.get(k)) && (charged || follows);
        if (one == two || !(moves || (charged && chargeIsFelt(one, two)))) {
            return new Solved.Found<>(still);
        }
        Solved<At> waited = afterWaiting(one, two, ranges);
        if (!(waited instanceof Solved.Found<At> found)) {
            return new Solved.Failed<>(((Solved.Failed<At>) waited).reason());
        }
        Reading now = found.value().reading();
        if (now.alike(settled.reading())) {
            return new Solved.Found<>(still);
        }
        Climbing climbing = new Climbing(Climbing.Shown.of(now), Climbing.Shown.of(settled.reading()));
        return new Solved.Found<>(
                charged
                        ? new Taken(
                                now.moving(climbing),
                                found.value().across(),
                                null,
                                found.value().amps())
                        : new Taken(
                                settled.reading().moving(climbing), settled.across(), settled.point(), settled.amps()));
    }

    /** The display after waiting, in the lowest range that then holds the value; a range too low is left at once. */
    private Solved<At> afterWaiting(int one, int two, List<Instrument> ranges) {
        for (int k = 0; ; k++) {
            Instrument meterAs = ranges.get(k);
            double ohms = behind(meterAs);
            Norton source = new Norton(one, two, 1 / ohms, meterAs.openVolts() / ohms);
            Solved<Run> run = solver.with(source).run(grid, Climbing.AFTER_SECONDS, rest, chargedVolts);
            if (!(run instanceof Solved.Found<Run> found)) {
                return new Solved.Failed<>(((Solved.Failed<Run>) run).reason());
            }
            At at = at(meterAs, null, last(found.value().volts(one, two)));
            // a source that is driven backwards is driven backwards on every range
            boolean backwards = at.amps() * meterAs.openVolts() < 0;
            if (!at.reading().overRange() || backwards || k == ranges.size() - 1) {
                return new Solved.Found<>(at);
            }
        }
    }

    private static double last(Waveform wave) {
        return wave.value(wave.size() - 1);
    }

    /**
     * Whether the charge that the meter must bring, ΣC·ΔV, over the mean of its current at the start and at the end takes a
     * good part of the time waited.
     */
    private boolean takesLong(At settled, Instrument meterAs) {
        OperatingPoint point = settled.point();
        if (point == null) {
            return true;
        }
        double coulombs = 0;
        for (Capacitance c : capacitances) {
            int one = modelled.node(c.plus());
            int two = modelled.node(c.minus());
            coulombs += c.farads() * Math.abs(point.volts(one, two) - rest.volts(one, two));
        }
        double shortAmps = Math.abs(meterAs.openVolts()) / behind(meterAs);
        double meanAmps = (shortAmps + Math.abs(settled.amps())) / 2;
        return coulombs > SETTLED_RATIO * Climbing.AFTER_SECONDS * meanAmps;
    }

    /** Whether the leads would feel what the capacitors hold, at any time while one waits. */
    private boolean chargeIsFelt(int one, int two) {
        Run run = untouched;
        if (run == null) {
            run = solver.run(grid, Climbing.AFTER_SECONDS, rest, chargedVolts).orElse(reason -> null);
            untouched = run;
        }
        if (run == null) {
            return true;
        }
        Waveform volts = run.volts(one, two);
        double before = rest.volts(one, two);
        return Math.max(volts.highest() - before, before - volts.lowest()) > FALSIFIES_VOLTS / 10;
    }

    private void warnOfVoltage(Check check, int one, int two) {
        double volts = rest.volts(one, two);
        if (Math.abs(volts) > FALSIFIES_VOLTS && check.function() != MeterFunction.DC_AMPS) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "%s to %s: %.2f V stand there with the plug out (a battery?); ohms and diode test mislead",
                    check.from(),
                    check.to(),
                    volts));
        }
        for (Capacitance c : capacitances) {
            Double held = chargedVolts.get(c.element());
            if (held != null && held != 0) {
                double stands = meter.model().ohms().standsVolts();
                String harm = Math.abs(held) > stands
                        ? String.format(
                                Locale.ROOT, "and it may destroy the meter, which stands %.0f V on ohms", stands)
                        : "and it drives the meter backwards or past its end";
                remarks.add(c.part() + " holds " + Notation.format(new Quantity(held, Unit.VOLT))
                        + ": discharge it first, through a resistor, and measure; ohms, diode test and continuity"
                        + " mislead wherever it is felt, " + harm);
            }
        }
    }
}
