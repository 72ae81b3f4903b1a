package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.TestPoint;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import fusetale.model.Conditions;
import fusetale.model.Modelled;
import fusetale.model.NetworkBuilder;
import fusetale.signal.Waveform;
import java.nio.file.Path;
import java.util.Objects;
import org.assertj.core.api.SoftAssertions;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** That the periodic states of the machines shipped are what the machines settle to, and as exact as readings need. */
class PeriodicityJourneyTest {
    private static final PeriodicSettings USUAL = PeriodicSettings.mains(60);
    /** A step of a method of second order errs with its third power: a thousandth of the error, ten times the steps. */
    private static final PeriodicSettings FINE =
            USUAL.withAccuracy(USUAL.accuracy() / 1000).withFewestSteps(8192);

    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void directVoltagesStayWithTenTimesTheSteps(String machine) {
        Circuit circuit = read(machine);
        Modelled modelled = powered(circuit);
        Solver solver = new Solver(modelled.network());
        PeriodicState usual = solve(solver, USUAL, null);
        PeriodicState fine = solve(solver, FINE, usual);

        SoftAssertions softly = new SoftAssertions();
        softly.assertThat(fine.volts(0, 0).size())
                .isGreaterThanOrEqualTo(10 * usual.volts(0, 0).size());
        for (TestPoint point : circuit.points()) {
            double volts = volts(usual, modelled, point).mean();
            double fineVolts = volts(fine, modelled, point).mean();
            // a thousandth of the reading; a tenth of a millivolt where there is none
            softly.assertThat(volts).as(point.name()).isCloseTo(fineVolts, within(1e-3 * Math.abs(fineVolts) + 1e-4));
        }
        softly.assertAll();
    }

    /**
     * Nothing drives a direct current through a winding that is followed by a full-wave bridge or a voltage doubler, so none
     * may come out of the arithmetic. The lighting winding of Night Ferry is left out: each of its halves feeds one diode.
     */
    @ParameterizedTest
    @CsvSource({
        "first-light, T1.primary",
        "first-light, T1.sec",
        "fog-bell, T1.primary",
        "fog-bell, T1.sec",
        "night-ferry, T101.primary",
        "night-ferry, T101.log",
        "night-ferry, T101.sol",
        "night-ferry, T101.disp"
    })
    void windingsCarryNoDirectCurrentOfTheirOwn(String machine, String winding) {
        Modelled modelled = powered(read(machine));
        PeriodicState state = solve(new Solver(modelled.network()), USUAL, null);

        Waveform amps = state.amps(modelled.element(winding).orElseThrow());

        assertThat(amps.mean()).isCloseTo(0, within(1e-4 * amps.rms()));
    }

    /**
     * The teaching board left running: its slowest part is the reservoir, 4700 μF on less than 85 ohm, so that after 4 s less
     * than e⁻¹⁰ of the start is left, and both ways step with errors of a ten-thousandth.
     */
    @ParameterizedTest
    @ValueSource(strings = {"TP1", "TP2"})
    void theStateThatRepeatsIsTheOneTheMachineSettlesTo(String point) {
        Circuit circuit = read("first-light");
        Modelled modelled = powered(circuit);
        Solver solver = new Solver(modelled.network());
        TestPoint at = circuit.point(point).orElseThrow();
        PeriodicState state = solve(solver, USUAL, null);
        Waveform run =
                found(solver.run(USUAL, /* seconds= */ 4)).volts(modelled.node(at.at()), modelled.node(at.against()));

        double voltSeconds = 0;
        double seconds = 0;
        for (int k = run.size() - 1; seconds < USUAL.period() * (1 - 1e-9); k--) {
            voltSeconds += run.weight(k) * run.value(k);
            seconds += run.weight(k);
        }

        assertThat(seconds).isCloseTo(USUAL.period(), within(1e-9));
        double volts = volts(state, modelled, at).mean();
        assertThat(voltSeconds / seconds).isCloseTo(volts, within((2e-4 + Math.exp(-10)) * volts));
    }

    private static Waveform volts(PeriodicState state, Modelled modelled, TestPoint point) {
        return state.volts(modelled.node(point.at()), modelled.node(point.against()));
    }

    private static Modelled powered(Circuit circuit) {
        return NetworkBuilder.build(circuit, Conditions.mains(120));
    }

    private static PeriodicState solve(Solver solver, PeriodicSettings settings, @Nullable PeriodicState near) {
        return found(solver.periodicState(settings, near, () -> false));
    }

    private static <T> T found(Solved<T> solved) {
        return solved.orElse(reason -> {
            throw new AssertionError(reason);
        });
    }

    private static Circuit read(String machine) {
        return Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits", machine + ".yaml"))
                .circuit());
    }
}
