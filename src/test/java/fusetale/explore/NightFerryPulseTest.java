package fusetale.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.bench.Arrangement;
import fusetale.bench.PulseRun;
import fusetale.bench.PulseRuns;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.Coil;
import fusetale.circuit.Darlington;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Fitting;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.Solved;
import fusetale.signal.Waveform;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Night Ferry's first coil pulsed for 40 ms with its flyback diode open. */
class NightFerryPulseTest {
    private static final double SECONDS = 0.040;
    private static final double LANDED = 0.7e-6;
    private static final Circuit FERRY = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/night-ferry.yaml"))
            .circuit());
    private static final Switching SWITCHING = Switching.of(FERRY, "L201").orElseThrow();

    private static List<PulseRun> runs;
    private static Circuit open;

    @BeforeAll
    static void pulse() throws UnfitSupposition, UnfitArrangement {
        Supposition supposition = new Supposition(List.of(new Fault("D201", "", FailureMode.OPEN, null)));
        Arrangement pulsed = Arrangement.powered(FERRY).withPulse("L201", SECONDS);
        open = Catalogue.apply(FERRY, pulsed.appliedTo(FERRY), supposition);
        Solved<List<PulseRun>> ran = PulseRuns.of(FERRY, open, pulsed, Set.of(), null, () -> false);
        runs = ((Solved.Found<List<PulseRun>>) ran).value();
    }

    @Test
    void theDriverIsFoundThroughTheConnector() {
        assertThat(SWITCHING.driver().name()).isEqualTo("Q201");
        assertThat(SWITCHING.clamps()).extracting(p -> p.name()).containsExactly("D201");
    }

    /** The strong winding alone asks for 12 A; the TIP102's class stands 8 A, 15 A at the peak and 30 mJ in breakdown. */
    @Test
    void anotherDriverStandsWhatItsOwnDataSheetSays() throws UnfitSupposition {
        Swap smaller = new Swap("Q203", new Fitting.Model("TIP102"));
        Circuit swapped = Catalogue.apply(FERRY, new Supposition(List.of(), List.of(smaller)));

        assertThat(Stands.of(swapped, FERRY.part("Q203").orElseThrow()))
                .isEqualTo(new Stands(8, 15, Double.POSITIVE_INFINITY, 0.030));
    }

    /** Conservation of energy after switching off: ½·L·I² = ∫i²R dt + ∫v·i dt out of the coil's ends, v·i in the driver less the rail's. */
    @Test
    void whatTheCoilStoredIsFoundAgain() {
        Coil coil = (Coil) open.part("L201").orElseThrow();
        Darlington driver = (Darlington) open.part("Q201").orElseThrow();
        for (PulseRun run : runs) {
            double off = run.fromSeconds() + SECONDS;
            Waveform amps = run.amps("L201").orElseThrow();
            Waveform collector = run.volts(driver.collector(), driver.emitter());
            Waveform rail = run.volts(coil.one(), driver.emitter());
            Waveform driven = run.amps("Q201").orElseThrow();
            double atOff = 0;
            double heat = 0;
            double added = 0;
            double avalanche = 0;
            for (int k = 0; k < amps.size(); k++) {
                if (amps.seconds(k) <= off + LANDED) {
                    atOff = amps.value(k);
                } else {
                    double i = amps.value(k);
                    heat += amps.weight(k) * i * i * coil.ohms().si();
                    added += amps.weight(k) * rail.value(k) * i;
                    avalanche += amps.weight(k) * collector.value(k) * driven.value(k);
                }
            }
            double last = amps.value(amps.size() - 1);
            double stored = coil.henries().si() * (atOff * atOff - last * last) / 2;
            PulseFigures figures = new PulseReading(open, run, SWITCHING, SECONDS).figures();

            assertThat(stored).isGreaterThan(0.05);
            assertThat(avalanche).isCloseTo(stored - heat + added, within(0.02 * stored));
            assertThat(figures.avalancheJoules()).isCloseTo(avalanche, within(0.02 * stored));
            assertThat(figures.limit().kind()).isEqualTo(PulseFigures.Kind.BREAKDOWN);
        }
    }

    /** The mains decides by the moment: on a rail without a reservoir the current at switch-off is not always the same. */
    @Test
    void momentsOfTheCycleDiffer() {
        double[] stored = runs.stream()
                .mapToDouble(r ->
                        new PulseReading(open, r, SWITCHING, SECONDS).figures().storedJoules())
                .sorted()
                .toArray();

        assertThat(stored[stored.length - 1]).isGreaterThan(1.5 * stored[0]);
    }
}
