package fusetale.report;

import fusetale.aftermath.Strain;
import fusetale.aftermath.Stress;
import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Reading;
import fusetale.circuit.Circuit;
import fusetale.circuit.Drawing;
import fusetale.circuit.FuseLink;
import fusetale.circuit.Mains;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Net;
import fusetale.circuit.TestPoint;
import fusetale.explore.Compared;
import fusetale.explore.Doubt;
import fusetale.explore.Effort;
import fusetale.explore.FuseFate;
import fusetale.explore.HealthyRange;
import fusetale.explore.Outcome;
import fusetale.explore.Question;
import fusetale.explore.Trace;
import fusetale.fault.Supposition;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** An outcome made up for the look of tables and pictures; its figures are of no machine. */
final class Made {
    static final Net GND = new Net("gnd");

    private Made() {}

    static Circuit circuit() {
        List<TestPoint> points = new ArrayList<>();
        point(points, "TP1", "raw5", "logic reservoir");
        point(points, "TP2", "v5", "5 V at the regulator");
        point(points, "TP4", "solraw", "solenoid rail at BR201");
        point(points, "TP6", "solbf", "bank B behind F202");
        point(points, "TP12", "hvraw", "display supply before the dropper, bites");
        point(points, "TP15", "hvw", "display rail at the glasses, bites");
        point(points, "TP18", "sol1", "solenoid secondary");
        return new Circuit(
                "Made Up",
                "",
                new Mains(
                        volts(120), volts(110), volts(126), new Quantity(60, Unit.HERTZ), new Quantity(0.4, Unit.OHM)),
                GND,
                List.of(),
                points,
                List.of(),
                List.of(),
                Drawing.NONE,
                List.of());
    }

    /** With power on, a danger, fuses of several fates, waveforms. */
    static Outcome shortedLeg() {
        List<Compared> rows = List.of(
                row("TP18", MeterFunction.AC_VOLTS, 52.11, 14.8, 48.2, 55.3),
                row("TP4", MeterFunction.DC_VOLTS, 45.53, 11.2, 41.6, 48.1),
                row("TP4", MeterFunction.AC_VOLTS, 22.43, 58.1, 20.4, 23.7),
                row("TP6", MeterFunction.DC_VOLTS, 45.52, 11.2, 41.6, 48.1),
                row("TP12", MeterFunction.DC_VOLTS, 240.1, 231.8, 219.5, 253.0),
                row("TP1", MeterFunction.DC_VOLTS, 10.81, 10.55, 9.6, 11.9),
                row("TP15", MeterFunction.DC_VOLTS, 189.7, 188.9, 182.0, 197.0),
                row("TP1", MeterFunction.AC_VOLTS, 0.41, 0.40, 0.29, 0.52),
                row("TP2", MeterFunction.DC_VOLTS, 5.012, 5.011, 4.85, 5.15));
        return new Outcome(
                new Question(
                        circuit(), Supposition.NOTHING, arrangement(true), meter(), List.of(), Question.Options.USUAL),
                rows,
                List.of(
                        fuse("F201", 6, 25, FuseFate.State.MAY_MELT, 47.2, new FuseFate.Between(12, 3600)),
                        fuse("F202", 5, 5, FuseFate.State.INTACT, 0.0121, null),
                        fuse("F101", 4, 4, FuseFate.State.MELTS, 12.5, new FuseFate.Between(0.15, 3))),
                List.of(new Stress("T101", "sol", Strain.WINDING_CURRENT, 47.2, 4)),
                List.of(
                        new Trace("TP18 to TP4", Unit.VOLT, wave(73, 0, false), wave(20, 1, false)),
                        new Trace("TP4", Unit.VOLT, wave(72, 0, true), wave(16, 1, true)),
                        new Trace("F201", Unit.AMPERE, wave(0.1, 0, false), wave(66, 3, false))),
                List.of(
                        new Doubt(
                                Doubt.Severity.DANGER,
                                "F201 holds a 25 A fuse: it may hold for minutes or more while winding sol of T101"
                                        + " carries 47 A against its 4 A rating."),
                        new Doubt(Doubt.Severity.NOTE, "F101 carries 12.5 A and melts in 0.15 to 3 s.")),
                new Effort("shooting", 6, 12_345, 3.2e-9));
    }

    /** With power off: diode test and ohms, OL on either side. */
    static Outcome powerOff() {
        List<Compared> rows = List.of(
                Compared.of(
                        ol("TP4", MeterFunction.DIODE_TEST),
                        reading("TP4", MeterFunction.DIODE_TEST, 0.001, 0.002),
                        new HealthyRange(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)),
                Compared.of(
                        reading("TP18", MeterFunction.DIODE_TEST, 0.444, 0.005),
                        ol("TP18", MeterFunction.DIODE_TEST),
                        new HealthyRange(0.43, 0.46)),
                row("TP6", MeterFunction.DIODE_TEST, 0.889, 0.444, 0.87, 0.91));
        return new Outcome(
                new Question(
                        circuit(), Supposition.NOTHING, arrangement(false), meter(), List.of(), Question.Options.USUAL),
                rows,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new Effort("direct", 3, 120, 1e-12));
    }

    static Compared row(String point, MeterFunction function, double built, double supposed, double low, double high) {
        return Compared.of(
                reading(point, function, built, 0.005 * built),
                reading(point, function, supposed, 0.005 * supposed),
                new HealthyRange(low, high));
    }

    static Reading reading(String point, MeterFunction function, double value, double halfWidth) {
        String format = value >= 100 ? "%.1f V" : value >= 10 ? "%.2f V" : "%.3f V";
        return new Reading(
                new Check(point, "gnd", function), value, false, String.format(Locale.ROOT, format, value), halfWidth);
    }

    static Reading ol(String point, MeterFunction function) {
        return new Reading(new Check(point, "gnd", function), Double.POSITIVE_INFINITY, true, "OL", 0);
    }

    static Arrangement arrangement(boolean powerOn) {
        return new Arrangement(
                powerOn ? "as found" : "power off",
                powerOn,
                120,
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                null);
    }

    static Meter meter() {
        return Meter.trueRms4000();
    }

    private static FuseFate fuse(
            String name,
            double marked,
            double fitted,
            FuseFate.State state,
            double amps,
            FuseFate.@Nullable Between seconds) {
        return new FuseFate(name, link(marked), link(fitted), state, amps, seconds);
    }

    static FuseLink link(double amps) {
        return new FuseLink(
                new Quantity(amps, Unit.AMPERE),
                FuseLink.Speed.SLOW,
                FuseLink.Standard.IEC_60127,
                "6.3x32",
                new Quantity(0.02, Unit.OHM));
    }

    private static Waveform wave(double peak, double sag, boolean rectified) {
        int samples = 128;
        double[] seconds = new double[samples];
        double[] values = new double[samples];
        double[] weights = new double[samples];
        for (int k = 0; k < samples; k++) {
            double angle = 2 * Math.PI * (k + 1) / samples;
            seconds[k] = (k + 1) / 60.0 / samples;
            weights[k] = 1 / 60.0 / samples;
            double sine = peak * Math.sin(angle);
            values[k] = (rectified ? Math.abs(sine) : sine) - sag * Math.max(0, Math.cos(angle));
        }
        return new Waveform(seconds, values, weights);
    }

    private static void point(List<TestPoint> points, String name, String net, String label) {
        points.add(new TestPoint(name, new Net(net), GND, label, TestPoint.Access.BENCH_TOP, Map.of()));
    }

    private static Quantity volts(double volts) {
        return new Quantity(volts, Unit.VOLT);
    }
}
