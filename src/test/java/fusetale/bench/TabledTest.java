package fusetale.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.Net;
import fusetale.mna.Solved;
import fusetale.signal.Waveform;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** All curves worked out at once are those worked out one by one: the same sums in another order. */
class TabledTest {
    private static final double ROUNDING_RATIO = 1e-8;

    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell"})
    void curvesAreThoseWorkedOutOneByOne(String name) throws Exception {
        Circuit circuit = Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits/" + name + ".yaml"))
                .circuit());
        Bench bench = Bench.of(circuit, Arrangement.powered(circuit), Meter.trueRms4000());
        Seen seen = ((Solved.Found<Seen>) bench.look(List.of(), null, () -> false)).value();
        Seen tabled = seen.tabled();
        double volts = 0;
        for (Net net : circuit.nets()) {
            Waveform one = seen.volts(net, circuit.ground());
            volts = Math.max(volts, Math.max(one.highest(), -one.lowest()));
            assertAlike(net.name(), tabled.volts(net, circuit.ground()), one);
            assertThat(seen.meanVolts(net, circuit.ground()))
                    .as(net.name())
                    .isCloseTo(one.mean(), within(ROUNDING_RATIO * Math.max(1, one.rms())));
        }
        assertThat(volts).isGreaterThan(10);
        double amps = 0;
        for (String current : seen.modelled().currents().keySet()) {
            Waveform one = seen.amps(current);
            amps = Math.max(amps, Math.max(one.highest(), -one.lowest()));
            assertAlike(current, tabled.amps(current), one);
        }
        assertThat(amps).isGreaterThan(0.1);
        assertThat(tabled.work()).isEqualTo(seen.work());
    }

    private static void assertAlike(String what, Waveform tabled, Waveform one) {
        assertThat(tabled.size()).as(what).isEqualTo(one.size());
        double most = Math.max(Math.abs(one.highest()), Math.abs(one.lowest()));
        for (int k = 0; k < one.size(); k++) {
            assertThat(tabled.seconds(k)).as(what).isEqualTo(one.seconds(k));
            assertThat(Math.abs(tabled.value(k) - one.value(k)))
                    .as("%s at %s", what, k)
                    // what rounding leaves where large terms cancel, over ten milliohms: 1.5e-9 A was seen
                    .isLessThanOrEqualTo(ROUNDING_RATIO * Math.max(1, most));
        }
    }
}
