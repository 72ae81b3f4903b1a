package fusetale.bench;

import fusetale.circuit.MeterFunction;
import fusetale.circuit.MeterModel;
import fusetale.circuit.PartLibrary;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A multimeter in somebody's hand: what its sheet says, and the ranges left to it. Where several are left, it picks, or the
 * hand at its switch does: the lowest that holds the value; of ohms before a needle, the one nearest the middle of the scale.
 *
 * @param model its sheet
 * @param directRanges ranges of d.c. volts, rising
 * @param alternatingRanges ranges of a.c. volts, rising
 * @param ohmsRanges ranges of ohms, rising
 * @param ampsRanges ranges of d.c. amperes, rising; empty where it has none
 * @param chosen the range it was set to by hand, in words; empty for none
 */
public record Meter(
        MeterModel model,
        List<MeterRange> directRanges,
        List<MeterRange> alternatingRanges,
        List<OhmsRange> ohmsRanges,
        List<AmpsRange> ampsRanges,
        String chosen) {
    private static final String OVER_RANGE = "OL";
    private static final String OFF_THE_SCALE = "off the scale";
    private static final String NO_DEFLECTION = "∞";
    private static final String BEEPS = "beeps";
    private static final String SILENT = "silent";

    /** Copies the lists. */
    public Meter {
        directRanges = List.copyOf(directRanges);
        alternatingRanges = List.copyOf(alternatingRanges);
        ohmsRanges = List.copyOf(ohmsRanges);
        ampsRanges = List.copyOf(ampsRanges);
        if (directRanges.isEmpty() || alternatingRanges.isEmpty() || ohmsRanges.isEmpty()) {
            throw new IllegalArgumentException(model.name() + " needs at least one range for each function");
        }
    }

    /**
     * A range of ohms: what stands behind the leads, and how the result is shown.
     *
     * @param display range and accuracy; before a needle resolution and accuracy over full scale are shares of the arc
     * @param openVolts voltage of the open leads [V]
     * @param shortAmps current through shorted leads [A]
     */
    public record OhmsRange(MeterRange display, double openVolts, double shortAmps) {
        /** Resistance behind the jacks [ohm]; of a needle's scale, its middle. */
        public double sourceOhms() {
            return openVolts / shortAmps;
        }
    }

    /**
     * A range of amperes.
     *
     * @param display range and accuracy
     * @param burdenOhms resistance between the jacks [ohm]
     */
    public record AmpsRange(MeterRange display, double burdenOhms) {}

    /** A meter by its sheet. */
    public static Meter of(MeterModel model) {
        return new Meter(
                model,
                model.directVolts().ranges().stream().map(MeterRange::of).toList(),
                model.alternatingVolts().ranges().stream().map(MeterRange::of).toList(),
                model.ohms().ranges().stream()
                        .map(r -> new OhmsRange(MeterRange.of(r.display()), r.openVolts(), r.shortAmps()))
                        .toList(),
                model.directAmps().stream()
                        .map(r -> new AmpsRange(MeterRange.of(r.display()), r.burdenOhms()))
                        .toList(),
                "");
    }

    /** The meter that is taken where none is asked for: 4000 counts, true r.m.s., a.c.-coupled, 10 MΩ. */
    public static Meter trueRms4000() {
        return shipped("true rms 4000-count");
    }

    /** A cheap 3½-digit meter: average-responding, a.c.-coupled, 10 MΩ. */
    public static Meter averageResponding() {
        return shipped("average-responding 3½ digit");
    }

    private static Meter shipped(String name) {
        return builtIn().stream()
                .filter(m -> m.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the program's own meters have no " + name));
    }

    /** The meters that come with the program, the usual one first. */
    public static List<Meter> builtIn() {
        return PartLibrary.shipped().meters().values().stream().map(Meter::of).toList();
    }

    /** What to call it. */
    public String name() {
        return model.name();
    }

    /** {@code basic 3½ digit, set to 20 V}. */
    public String words() {
        return chosen.isEmpty() ? name() : name() + ", set to " + chosen;
    }

    /** Whether it has a needle. */
    public boolean analogue() {
        return model.display() == MeterModel.Display.ANALOGUE;
    }

    /**
     * The same set to one range by hand, in every function that has it.
     *
     * @param fullScale what the range is called by: 20 V for one of 19.99 V, 2 kohm, 200 mA
     * @return empty where no function has such a range
     */
    public Optional<Meter> withRange(Quantity fullScale) {
        List<MeterRange> direct = directRanges;
        List<MeterRange> alternating = alternatingRanges;
        List<OhmsRange> ohms = ohmsRanges;
        List<AmpsRange> amps = ampsRanges;
        if (fullScale.unit() == Unit.VOLT) {
            direct = only(directRanges, r -> r, fullScale.si());
            alternating = only(alternatingRanges, r -> r, fullScale.si());
        } else if (fullScale.unit() == Unit.OHM) {
            ohms = only(ohmsRanges, OhmsRange::display, fullScale.si());
        } else {
            amps = only(ampsRanges, AmpsRange::display, fullScale.si());
        }
        boolean none = direct.equals(directRanges)
                && alternating.equals(alternatingRanges)
                && ohms.equals(ohmsRanges)
                && amps.equals(ampsRanges);
        return none
                ? Optional.empty()
                : Optional.of(new Meter(model, direct, alternating, ohms, amps, Notation.format(fullScale)));
    }

    private static <R> List<R> only(List<R> ranges, Function<R, MeterRange> display, double figure) {
        List<R> called =
                ranges.stream().filter(r -> display.apply(r).isCalled(figure)).toList();
        return called.isEmpty() ? ranges : called;
    }

    /** Whether it has a function. */
    public boolean has(MeterFunction function) {
        return switch (function) {
            case DC_VOLTS, AC_VOLTS, OHMS -> true;
            case DIODE_TEST -> model.diodeTest() != null;
            case CONTINUITY -> model.continuity() != null;
            case DC_AMPS -> !ampsRanges.isEmpty();
        };
    }

    /** Input resistance [ohm] of a range of volts. */
    public double inputOhms(MeterFunction function, MeterRange range) {
        MeterModel.Volts volts = function == MeterFunction.DC_VOLTS ? model.directVolts() : model.alternatingVolts();
        return volts.input().ohms(range.fullScale());
    }

    /** The lowest input resistance [ohm] of all ranges of volts. */
    public double leastInputOhms() {
        return Math.min(
                leastInputOhms(MeterFunction.DC_VOLTS, directRanges),
                leastInputOhms(MeterFunction.AC_VOLTS, alternatingRanges));
    }

    private double leastInputOhms(MeterFunction function, List<MeterRange> ranges) {
        return ranges.stream().mapToDouble(r -> inputOhms(function, r)).min().orElse(Double.POSITIVE_INFINITY);
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
            case OHMS, DIODE_TEST, CONTINUITY, DC_AMPS ->
                throw new IllegalArgumentException(function.words() + " is no voltage function");
        };
    }

    private double alternating(Waveform volts) {
        boolean coupled = model.alternating().coupled();
        return switch (model.alternating().detector()) {
            case TRUE_RMS -> coupled ? volts.alternatingRms() : volts.rms();
            case AVERAGE_RESPONDING ->
                Waveform.SINE_FORM_FACTOR * (coupled ? volts.alternatingRectifiedMean() : volts.rectifiedMean());
            // the positive half's mean is (mean |v| + mean v)/2, and twice the factor makes a sine's r.m.s. of it
            case HALF_WAVE ->
                Waveform.SINE_FORM_FACTOR
                        * (coupled ? volts.alternatingRectifiedMean() : volts.rectifiedMean() + volts.mean());
        };
    }

    /** The reading of a voltage in the range that is picked. */
    Reading voltsReading(Check check, double volts) {
        return picked(check.function(), volts).reading(check, volts, overShows());
    }

    /** The range of volts that is picked for a value: the lowest that holds it, else the highest. */
    MeterRange picked(MeterFunction function, double value) {
        List<MeterRange> ranges = function == MeterFunction.DC_VOLTS ? directRanges : alternatingRanges;
        for (MeterRange range : ranges) {
            if (range.holds(value)) {
                return range;
            }
        }
        return ranges.get(ranges.size() - 1);
    }

    /** The reading of a current in a range. */
    Reading ampsReading(Check check, AmpsRange range, double amps) {
        return range.display().reading(check, amps, overShows());
    }

    /** The reading of a voltage by the diode test. */
    Reading diodeReading(Check check, MeterModel.DiodeTest test, double volts) {
        return MeterRange.of(test.display()).reading(check, volts, overShows());
    }

    /**
     * The reading of the buzzer: over range means silent, and two sounds tell no difference, so its accuracy is its threshold.
     */
    static Reading buzzerReading(Check check, MeterModel.Continuity buzzer, double ohms) {
        boolean silent = !(ohms >= 0 && ohms < buzzer.belowOhms());
        return new Reading(
                check, silent ? buzzer.belowOhms() : ohms, silent, silent ? SILENT : BEEPS, buzzer.belowOhms());
    }

    /**
     * The reading of ohms in a range.
     *
     * @param volts at the jacks [V]
     * @param amps out of the positive jack [A]
     * @param circuitOhms resistance that the source has behind the points, leads included [ohm]
     */
    Reading ohmsReading(Check check, OhmsRange range, double volts, double amps, double circuitOhms) {
        if (analogue()) {
            return needleReading(check, range, amps, circuitOhms);
        }
        double ohms = amps > 0 ? volts / amps : Double.POSITIVE_INFINITY;
        MeterRange display = range.display();
        if (!display.holds(ohms) || ohms < 0) {
            double value = display.fullScale();
            return new Reading(check, value, true, OVER_RANGE, display.halfWidth(value));
        }
        return display.reading(check, ohms, OVER_RANGE);
    }

    /**
     * A series ohmmeter: with the zero set at shorted leads, a deflection of d of the arc means R = (1/d − 1) times the
     * resistance behind the points, which is the middle of the scale (any textbook of electrical measurement). Its accuracy is
     * a share of the arc, so that of R grows with (middle + R)²/middle.
     */
    private static Reading needleReading(Check check, OhmsRange range, double amps, double circuitOhms) {
        MeterRange display = range.display();
        double step = display.resolution() / display.fullScale();
        double arc = amps * circuitOhms / range.openVolts();
        double read = Math.rint(arc / step) * step;
        double last = circuitOhms / (circuitOhms + display.fullScale());
        if (read < last || read > 1 + step / 2) {
            double value = display.fullScale();
            String shows = read < last ? NO_DEFLECTION : OFF_THE_SCALE;
            return new Reading(check, value, true, shows, width(value, circuitOhms, display.fullScaleRatio()));
        }
        double ohms = circuitOhms * (1 / Math.min(1, arc) - 1);
        double shown = circuitOhms * (1 / Math.min(1, read) - 1);
        String shows = Notation.format(new Quantity(shown, Unit.OHM), 2);
        return new Reading(check, ohms, false, shows, width(ohms, circuitOhms, display.fullScaleRatio()));
    }

    private static double width(double ohms, double middle, double arcRatio) {
        return arcRatio * (middle + ohms) * (middle + ohms) / middle;
    }

    /** How far a needle stands from the middle of its arc, 0 to ½ and beyond. */
    static double fromTheMiddle(OhmsRange range, double amps, double circuitOhms) {
        return Math.abs(amps * circuitOhms / range.openVolts() - 0.5);
    }

    private String overShows() {
        return analogue() ? OFF_THE_SCALE : OVER_RANGE;
    }

    /** The diode test's sheet; null where it has none. */
    MeterModel.@Nullable DiodeTest diodeTest() {
        return model.diodeTest();
    }

    /** Names of the functions it has, for messages. */
    public List<String> functions() {
        List<String> names = new ArrayList<>();
        for (MeterFunction function : MeterFunction.values()) {
            if (has(function)) {
                names.add(function.words());
            }
        }
        return names;
    }
}
