package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is worked out for a neighbour by Sherman and Morrison's formula (Ann. Math. Stat. 21, 1950) is what factoring it anew
 * gives: the judge is the plain solver on the same network.
 */
class LinearChangeTest {
    private static final PeriodicSettings MAINS = PeriodicSettings.mains(60);

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 4, 400, 1e5})
    void changedLoadReadsWhatTheNetworkBuiltAnewReads(double loadOhms) {
        PeriodicState healthy = Solve.periodic(Supplies.bridge(28, 20, 0));
        Network changed = Supplies.bridge(28, loadOhms, 0);

        PeriodicState shared = Solve.found(Solver.near(changed, healthy).periodicState(MAINS, healthy, () -> false));
        PeriodicState anew = Solve.periodic(changed);

        int plus = changed.node("plus");
        assertThat(shared.volts(plus, 0).mean()).isCloseTo(anew.volts(plus, 0).mean(), within(1e-4));
        assertThat(shared.volts(plus, 0).highest())
                .isCloseTo(anew.volts(plus, 0).highest(), within(1e-3));
    }

    @Test
    void aLoadChangedIsOneConductance() {
        Layout before = new Layout(Supplies.bridge(28, 20, 0));
        List<Norton> changes = LinearChange.between(before, new Layout(Supplies.bridge(28, 10, 0)));

        assertThat(changes).singleElement().extracting(Norton::siemens).isEqualTo(1.0 / 10 - 1.0 / 20);
    }

    @Test
    void theSameMachineAtAnotherMainsChangesNothing() {
        Layout before = new Layout(Supplies.bridge(28, 20, 0));

        assertThat(LinearChange.between(before, new Layout(Supplies.bridge(30, 20, 0))))
                .isEmpty();
    }

    @Test
    void aCapacitorChangedIsNoConductance() {
        Network.Builder one = Network.builder("0").resistor("R", "a", "0", 1).capacitor("C", "a", "0", 1e-6);
        Network.Builder two = Network.builder("0").resistor("R", "a", "0", 1).capacitor("C", "a", "0", 2e-6);

        assertThat(LinearChange.between(new Layout(one.build()), new Layout(two.build())))
                .isNull();
    }

    @Test
    void whatUndoesAllThatHeldANodeIsFactoredAnew() {
        // 1 ohm beside a gigohm, opened: nine digits of what is left would be rounding
        Layout before = new Layout(held(1));
        Layout after = new Layout(held(1e9));
        Reduction base = Solve.found(Reduction.of(before, 0, Double.POSITIVE_INFINITY));
        List<Norton> changes = LinearChange.between(before, after);

        assertThat(changes).isNotNull();
        assertThat(base.changed(after, java.util.Objects.requireNonNull(changes)))
                .isNull();
    }

    @Test
    void everyUnknownAnswersEveryInputAsFactoredAnew() {
        // two conductances one after the other, then a meter's load with a source of its own
        Layout before = new Layout(ladder(47, 0.33));
        Layout after = new Layout(ladder(56, 0.47));
        double stage = 50e-6;
        Reduction laid = Solve.found(Reduction.of(before, 0, stage))
                .changed(after, java.util.Objects.requireNonNull(LinearChange.between(before, after)));
        Network metered = ladder(56, 0.47, 1e4);
        Norton meter = new Norton(after.network.node("c"), 0, 1 / 1e4, 0);
        Layout widened = new Layout(metered);

        Reduction corrected = java.util.Objects.requireNonNull(laid).with(widened, meter);
        Reduction anew = Solve.found(Reduction.of(widened, 0, stage));

        assertThat(corrected.inputs).isEqualTo(anew.inputs);
        double[] all = new double[anew.inputs];
        for (int j = 0; j < anew.inputs; j++) {
            all[j] = 1 + j;
            assertThat(corrected.columns[j]).containsExactly(anew.columns[j], within(1e-12));
        }
        assertThat(corrected.unknowns(all)).containsExactly(anew.unknowns(all), within(1e-11));
        assertThat(corrected.voltageRow(2, 3)).containsExactly(anew.voltageRow(2, 3), within(1e-12));
        assertThat(corrected.branchRow(widened.branch("V")))
                .containsExactly(anew.branchRow(widened.branch("V")), within(1e-12));
    }

    private static Network ladder(double first, double second, double... meterOhms) {
        Network.Builder builder = Network.builder("0")
                .voltage("V", "a", "0", new SourceShape.Constant(1))
                .resistor("R1", "a", "b", first)
                .capacitor("C", "b", "0", 1e-6)
                .resistor("R2", "b", "c", second)
                .resistor("R3", "c", "0", 10);
        for (double ohms : meterOhms) {
            builder.resistor("~load", "c", "0", ohms).current("~current", "0", "c", new SourceShape.Constant(0));
        }
        return builder.build();
    }

    private static Network held(double ohms) {
        return Network.builder("0")
                .voltage("V", "a", "0", new SourceShape.Constant(1))
                .resistor("R", "a", "b", ohms)
                .resistor("leak", "b", "0", 1e9)
                .build();
    }
}
