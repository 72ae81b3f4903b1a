package fusetale.explore;

import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.net;
import static fusetale.model.PartsBox.resistor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.fault.Supposition;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.Run;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.model.Conditions;
import fusetale.model.Modelled;
import fusetale.model.NetworkBuilder;
import fusetale.signal.Waveform;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeriesLampTest {
    private static Circuit load(double ohms) {
        return circuit(120, 1e-3, resistor("R1", "line", "neutral", ohms), resistor("R2", "gnd", "neutral", 1));
    }

    private static SeriesLamp.Glow glow(double watts, double ohms) {
        Circuit machine = load(ohms);
        Question question = new Question(
                machine,
                Supposition.NOTHING,
                Arrangement.powered(machine).withSeriesLamp(watts),
                Meter.trueRms4000(),
                List.of(new Check("line", "neutral", MeterFunction.AC_VOLTS)),
                new Question.Options(2, 1, 0));
        Answer answer = new Explorer(1).answer(question, (done, of) -> {}, () -> false);
        SeriesLamp lamp = ((Answer.Answered) answer).outcome().bench().seriesLamp();
        return Objects.requireNonNull(lamp).asBuilt();
    }

    /**
     * A lamp in series with a resistor on 120 V: R·I = 120 V − V(lamp) with I = I(rated)·(V/120)^0.55, solved by hand
     * (exponent: Standard Handbook for Electrical Engineers, lamp rerating). That law is for lamps near their rating; where the
     * resistor takes most, a power law and a heat balance part, by what 3 V of 120 V allow for, and 4 % of the resistor's volts below 60 V.
     */
    @ParameterizedTest
    @CsvSource({
        "40, 5, 1.7",
        "60, 5, 2.5",
        "100, 5, 4.1",
        "40, 20, 6.5",
        "100, 20, 15.4",
        "60, 50, 22.3",
        "100, 50, 34.6",
        "40, 100, 28.7",
        "60, 100, 40.0",
        "100, 100, 58.0",
        "60, 200, 65.1",
        "100, 200, 84.8",
        "40, 500, 84.8",
        "100, 500, 109.4"
    })
    void loadGetsWhatTheLampLeaves(double watts, double ohms, double volts) {
        SeriesLamp.Glow glow = glow(watts, ohms);

        double allowed = volts <= 60 ? Math.min(3, 0.04 * volts + 0.05) : 3;
        assertThat(glow.mainsAmps() * ohms).isCloseTo(volts, within(allowed));
        assertThat(glow.watts()).isCloseTo(glow.volts() * glow.mainsAmps(), within(2e-3 * glow.watts()));
        assertThat(glow.shareRatio()).isCloseTo(glow.watts() / watts, within(1e-9));
    }

    @Test
    void aDeadShortLeavesTheLampItsWholePower() {
        SeriesLamp.Glow glow = glow(100, 0.01);

        assertThat(glow.watts()).isCloseTo(100, within(0.5));
        assertThat(glow.mainsAmps()).isCloseTo(100 / 120.0, within(0.005));
        assertThat(glow.brightness()).isEqualTo(SeriesLamp.Brightness.BRIGHT);
    }

    /** (798/2600)^4 = 0.89 % and (1300/2600)^4 = 6.25 % by Stefan and Boltzmann; half of its power. */
    @ParameterizedTest
    @CsvSource({
        "0, DARK",
        "0.0087, DARK",
        "0.0091, DIM",
        "0.062, DIM",
        "0.063, GLOWING",
        "0.49, GLOWING",
        "0.51, BRIGHT"
    })
    void brightnessFollowsFromTheShare(double share, SeriesLamp.Brightness brightness) {
        assertThat(SeriesLamp.Brightness.of(share)).isEqualTo(brightness);
    }

    /** A cold filament of a 100 W lamp has 9.6 to 14 Ω (handbook), hot 144 Ω: the lamp begins cold and heats. */
    @Test
    void theLampHeatsFromCold() {
        Modelled modelled = NetworkBuilder.build(load(0.01), new Conditions(true, 120, 100.0));
        Solved<Run> ran = new Solver(modelled.network()).run(PeriodicSettings.mains(60), 1);
        Run run = ((Solved.Found<Run>) ran).value();
        Waveform amps = run.amps(modelled.element("mains").orElseThrow());
        Waveform volts = run.volts(modelled.network().node(Modelled.SERIES_LAMP_NODE), modelled.node(net("line")));
        int early = at(amps, 0.1e-3);
        int late = at(amps, 1 - 1 / 240.0);

        assertThat(volts.value(early) / amps.value(early)).isBetween(9.6, 14.0);
        assertThat(volts.value(late) / amps.value(late)).isCloseTo(144, within(0.05 * 144));
    }

    private static int at(Waveform wave, double seconds) {
        int k = 0;
        while (k < wave.size() - 1 && wave.seconds(k) < seconds) {
            k++;
        }
        return k;
    }
}
