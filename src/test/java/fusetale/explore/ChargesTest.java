package fusetale.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.aftermath.Aftermath;
import fusetale.bench.Arrangement;
import fusetale.bench.Bench;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.mna.Solved;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Closed forms: energy ½·C·V², discharge V·exp(−t/RC), so that 60 V is reached after R·C·ln(V/60 V). */
class ChargesTest {
    private static final String BOARD = """
            format: 1
            name: A battery and two capacitors
            mains: {volts: 120 V, range: 110..126 V, hertz: 60 Hz}
            ground: gnd
            parts:
              R3: {is: resistor, between: [line, neutral], value: 1 Mohm, watts: 1 W}
              R4: {is: resistor, between: [neutral, gnd], value: 1 Mohm, watts: 1 W}
              B1: {is: battery, plus: high, minus: gnd, volts: 120 V, ohms: 0.01 ohm}
              C1: {is: electrolytic, plus: high, minus: gnd, value: 100 uF, volts: 160 V}
              R1: {is: resistor, between: [high, gnd], value: 100 kohm, watts: 1 W}
              R2: {is: resistor, between: [high, low], value: 30 kohm, watts: 1 W}
              R5: {is: resistor, between: [low, gnd], value: 10 kohm, watts: 1 W}
              C2: {is: electrolytic, plus: low, minus: gnd, value: 100 uF, volts: 160 V}
            testpoints:
              TP1: {at: high, label: battery}
            drawing:
              R3: {square: [0, 0]}
              R4: {square: [0, 1]}
              B1: {square: [1, 0]}
              C1: {square: [2, 0]}
              R1: {square: [3, 0]}
              R2: {square: [4, 0]}
              R5: {square: [5, 0]}
              C2: {square: [6, 0]}
            """;

    private static final List<Charges.Charge> CHARGES = Charges.of(seen());

    @Test
    void onlyWhatIsAboveSixtyVoltsIsSpokenOf() {
        assertThat(CHARGES.stream().map(Charges.Charge::part)).containsExactly("C1");
    }

    @Test
    void energyIsHalfCapacitanceTimesVoltageSquared() {
        assertThat(CHARGES.get(0).joules()).isCloseTo(0.5 * 100e-6 * 120 * 120, within(1e-3));
    }

    @Test
    void timeToSixtyVoltsIsThatOfAnExponential() {
        assertThat(CHARGES.get(0).seconds()).isCloseTo(100e3 * 100e-6 * Math.log(2), within(1e-2));
    }

    /** Seven seconds are over before a lid is off; with the bleeder open it is minutes, and that must be seen before the plug is out. */
    @Test
    void aChargeThatLastsIsAHazardAndOneThatDoesNotACaution() {
        assertThat(ofCharge(List.of())).containsExactly(Doubt.Severity.CAUTION);
        assertThat(ofCharge(List.of(new Fault("R1", "", FailureMode.OPEN, null))))
                .containsExactly(Doubt.Severity.HAZARD);
    }

    private static List<Doubt.Severity> ofCharge(List<Fault> faults) {
        Circuit circuit = circuit();
        Question question = new Question(
                circuit,
                new Supposition(faults),
                Arrangement.powered(circuit),
                Meter.trueRms4000(),
                Check.all(circuit, true),
                new Question.Options(2, 1, 3, Aftermath.Settings.USUAL));
        Outcome outcome = ((Answer.Answered) new Explorer(1).answer(question, Progress.SILENT, () -> false)).outcome();
        return outcome.doubts().stream()
                .filter(Doubt::minded)
                .filter(d -> d.text().startsWith("C1 holds"))
                .map(Doubt::severity)
                .toList();
    }

    private static Circuit circuit() {
        var file = CircuitReader.withShippedParts().readText("board.yaml", BOARD);
        return Objects.requireNonNull(file.circuit(), () -> file.problems().toString());
    }

    private static Seen seen() {
        Circuit circuit = circuit();
        try {
            return ((Solved.Found<Seen>) Bench.of(circuit, Arrangement.powered(circuit), Meter.trueRms4000())
                            .look(List.of(), null, () -> false))
                    .value();
        } catch (UnfitArrangement e) {
            throw new AssertionError(e);
        }
    }
}
