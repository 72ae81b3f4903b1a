package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.Fuse;
import fusetale.circuit.Part;
import fusetale.circuit.TestPoint;
import fusetale.fault.Catalogue;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.model.Conditions;
import fusetale.model.Modelled;
import fusetale.model.NetworkBuilder;
import fusetale.sentence.SentenceException;
import fusetale.sentence.SentenceParser;
import fusetale.signal.Waveform;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.assertj.core.api.SoftAssertions;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Readings, in the steps of figures that are shown and in those in which machines are compared, are within 0.05 % of what steps a thousandth as wrong converge to: of the reading, of a
 * hundredth of the waveform's largest magnitude (peaks: the larger peak; d.c. means where machines are compared: a tenth), of 0.1 V
 * or of 1 mA, whichever is the most.
 * The last two are half of the last digit of a 4000-count meter's 400.0 mV and 4.000 mA ranges.
 */
class AccuracyTest {
    private static final double ASKED = 5e-4;
    private static final double FLOOR_OF_PEAK = 1e-2;
    /**
     * The mean of an alternating current is nothing: what is asked for is then less than half of the half digit that a meter of 4000
     * counts, whose range just holds the peak, is good for.
     */
    private static final double FLOOR_OF_MEAN = 0.1;

    private static final double FLOOR_VOLTS = 0.1;
    private static final double FLOOR_AMPS = 1e-3;

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "healthy", textBlock = """
            first-light | healthy
            first-light | BR1.leg1=short
            first-light | C1=open
            night-ferry | healthy
            night-ferry | C101=dried-out:20%
            """)
    void readingsAreWithinAHalfThousandthOfTheConvergedValue(String machine, @Nullable String supposed)
            throws SentenceException, UnfitSupposition {
        Circuit circuit = circuit(machine, supposed);
        Modelled modelled = NetworkBuilder.build(
                circuit, Conditions.mains(circuit.mains().volts().si()));
        compare(
                circuit,
                modelled,
                PeriodicSettings.mains(circuit.mains().hertz().si()),
                FLOOR_OF_MEAN);
    }

    /** Among them those that steps for comparing miss: alternating currents without a mean, milliamperes, a thyristor's instant. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "healthy", textBlock = """
            first-light | power on          | BR1.leg1=short
            night-ferry | as found          | healthy
            night-ferry | J2 unplugged      | D401=leaky
            night-ferry | first coil pulsed | Q213.ce=short
            fog-bell    | series lamp       | healthy
            fog-bell    | power on          | BR1.leg2=short
            fog-bell    | J1 off            | healthy
            """)
    void whatIsShownIsWithinAHalfThousandthWhereverItIsRead(String machine, String setting, @Nullable String supposed)
            throws SentenceException, UnfitSupposition, UnfitArrangement {
        Circuit drawn = circuit(machine, supposed);
        Arrangement arrangement = Arrangement.of(
                drawn,
                drawn.settings().stream()
                        .filter(s -> s.name().equals(setting))
                        .findFirst()
                        .orElseThrow());
        Circuit circuit = arrangement.appliedTo(drawn);
        Modelled modelled = NetworkBuilder.build(circuit, arrangement.conditions());
        compare(
                circuit,
                modelled,
                PeriodicSettings.shown(circuit.mains().hertz().si()),
                FLOOR_OF_PEAK);
    }

    private static Circuit circuit(String machine, @Nullable String supposed)
            throws SentenceException, UnfitSupposition {
        Circuit healthy = Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits", machine + ".yaml"))
                .circuit());
        return supposed == null ? healthy : Catalogue.apply(healthy, new SentenceParser(healthy).parse(supposed));
    }

    private static void compare(Circuit circuit, Modelled modelled, PeriodicSettings settings, double floorOfMean) {
        PeriodicSettings usual = PeriodicSettings.mains(circuit.mains().hertz().si());
        Solver solver = new Solver(modelled.network());
        PeriodicState first = found(solver.periodicState(usual, null, () -> false));
        PeriodicState state =
                settings.equals(usual) ? first : found(solver.periodicState(settings, first, () -> false));
        PeriodicSettings finest = usual.withAccuracy(usual.accuracy() / 1000).withFewestSteps(16 * usual.fewestSteps());
        Map<String, Waveform> right =
                waveforms(circuit, modelled, found(solver.periodicState(finest, first, () -> false)));

        SoftAssertions readings = new SoftAssertions();
        waveforms(circuit, modelled, state)
                .forEach((what, wave) -> compare(readings, what, wave, right.get(what), floorOfMean));
        assertThat(right).isNotEmpty();
        readings.assertAll();
    }

    private static void compare(
            SoftAssertions readings, String what, Waveform got, @Nullable Waveform converged, double floorOfMean) {
        Waveform right = Objects.requireNonNull(converged);
        double peak = Math.max(Math.abs(right.highest()), Math.abs(right.lowest()));
        double floor = what.startsWith("V") ? FLOOR_VOLTS : FLOOR_AMPS;
        double small = Math.max(floor, FLOOR_OF_PEAK * peak);
        close(readings, "mean " + what, got.mean(), right.mean(), Math.max(floor, floorOfMean * peak));
        close(readings, "rms " + what, got.rms(), right.rms(), small);
        close(readings, "a.c. rms " + what, got.alternatingRms(), right.alternatingRms(), small);
        close(readings, "highest " + what, got.highest(), right.highest(), Math.max(floor, peak));
        close(readings, "lowest " + what, got.lowest(), right.lowest(), Math.max(floor, peak));
    }

    private static void close(SoftAssertions readings, String what, double got, double right, double floor) {
        readings.assertThat(Math.abs(got - right) / Math.max(Math.abs(right), floor))
                .as("%s: %s, converged %s", what, got, right)
                .isLessThanOrEqualTo(ASKED);
    }

    private static Map<String, Waveform> waveforms(Circuit circuit, Modelled modelled, PeriodicState state) {
        Map<String, Waveform> waves = new LinkedHashMap<>();
        for (TestPoint p : circuit.points()) {
            waves.put("V of " + p.name(), state.volts(modelled.node(p.at()), modelled.node(p.against())));
        }
        for (Part part : circuit.parts()) {
            if (part instanceof Fuse) {
                modelled.element(part.name()).ifPresent(e -> waves.put("A of " + part.name(), state.amps(e)));
            }
        }
        return waves;
    }

    private static <T> T found(Solved<T> solved) {
        return solved.orElse(reason -> {
            throw new AssertionError(reason);
        });
    }
}
