package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.journeys.Balance;
import fusetale.mna.RandomNetworks.Nature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Networks drawn at random that were once answered wrongly or not at all; each answer is held to the laws of its parts. */
class OnceUnsolvedTest {
    /** Sound supplies with a regulator: input rising through dropout. */
    @ParameterizedTest
    @CsvSource({
        "0.01, 1, 0.1178, 0, 1e-3, 0", "0.01, 1, 0.5, 1000, 1e-3, 1e-5", "0.03, 2, 0.1178, 1000, 1e-3, 0",
        "0.01, 2, 1.5, 100, 1e-3, 1e-5", "0.03, 1, 0.1178, 0, 0, 0", "0.01, 2.5, 0.5, 1000, 0, 1e-5"
    })
    void regulatorIsFollowedThroughDropout(
            double outputOhms,
            double dropoutVolts,
            double limitAmps,
            double loadOhms,
            double farads,
            double outputFarads) {
        Network.Builder b = Network.builder("gnd");
        b.voltage("V", "w", "gnd", new SourceShape.Sine(0, 39.69, 60, 0));
        b.resistor("R3", "w", "a", 1.7);
        b.port("D", "a", "j", JunctionLaw.of(1.5e-8, 1.739).withLinear(172e-12, 1e-9));
        b.resistor("R6", "j", "p", 0.025);
        if (farads > 0) {
            b.capacitor("C", "p", "e", farads);
            b.resistor("RE", "e", "gnd", 0.1);
        }
        b.ports("U", "p", "r", "r", "gnd", new RegulatorLaw(16.91, outputOhms, dropoutVolts, 5e-3, limitAmps, 1000));
        if (loadOhms > 0) {
            b.resistor("RL", "r", "gnd", loadOhms);
        }
        if (outputFarads > 0) {
            b.capacitor("CO", "r", "x", outputFarads);
            b.resistor("RO", "x", "gnd", 0.1);
        }
        Network n = b.build();
        Run run = Solve.run(n, PeriodicSettings.mains(60), 2 / 60.0);

        Balance balance = Balance.of(n, run);
        assertThat(balance.unbalanced(1e-6, 1e-9, 3.6e-9)).isEmpty();
        assertThat(balance.disobedient(1e-3, 1e-4, 1e-6)).isEmpty();
        // at most its volts, and a thousandth of what comes in
        assertThat(run.volts(n.node("r"), 0).highest()).isBetween(0.0, 16.91 + 39.69 / 1000);
    }

    @Test
    void floatingWindingBetweenTwoConductingDiodesIsTold() {
        assertThat(Trial.of(RandomNetworks.draw(Nature.SUPPLY, 1007).network(), 60)
                        .findings())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 4, 10, 15, 60, 103, 120, 5129, 5387, 9826, 21807, 30055})
    void supplyIsSolved(long seed) {
        Trial.Verdict verdict =
                Trial.of(RandomNetworks.draw(Nature.SUPPLY, seed).network(), 60);
        assertThat(verdict.refusals()).isEmpty();
        assertThat(verdict.findings()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {5002, 5067})
    void brokenSupplyIsSolved(long seed) {
        Trial.Verdict verdict =
                Trial.of(RandomNetworks.draw(Nature.BROKEN, seed).network(), 60);
        assertThat(verdict.refusals()).isEmpty();
        assertThat(verdict.findings()).isEmpty();
    }

    // Reference: Kirchhoff's and the parts' laws, and one more cycle on finer steps (Trial).
    @ParameterizedTest
    @CsvSource({"BROKEN, 5103", "BROKEN, 9002", "BROKEN, 9796", "BROKEN, 20850", "TANGLE, 9274", "TANGLE, 21398"})
    void answerObeysTheLaws(Nature nature, long seed) {
        Trial.Verdict verdict = Trial.of(RandomNetworks.draw(nature, seed).network(), 60);
        assertThat(verdict.refusals()).isEmpty();
        assertThat(verdict.findings()).isEmpty();
    }

    // Reference: dV/dt = V·G/C grows by e every 2 us; after 70 us or so no digit of a double is left of 1e15 V.
    @Test
    void whatGrowsWithoutEndIsNamed() {
        Network n = Network.builder("gnd")
                .voltage("V", "a", "gnd", new SourceShape.Constant(1))
                .resistor("R", "a", "b", 1e6)
                .capacitor("C", "b", "gnd", 160e-12)
                .add(new Element.CurrentByVoltage("G", 2, 0, 2, 0, -80e-6))
                .build();
        Solved<Run> run = new Solver(n).run(PeriodicSettings.mains(60), 1e-3);
        assertThat(run).isInstanceOfSatisfying(Solved.Failed.class, f -> {
            NotSolved reason = f.reason();
            assertThat(reason.names()).containsExactly("C");
            assertThat(reason.detail()).contains("grows without end");
        });
    }

    // Reference: Faraday's law, 50 mV across a ring without resistance raise its current by V·T/L each cycle, for ever.
    @Test
    void currentThatGrowsByALittleEachCycleDoesNotRepeat() {
        Network n = Network.builder("gnd")
                .voltage("V", "a", "gnd", new SourceShape.Constant(0.05))
                .inductor("L1", "a", "b", 1e-3)
                .inductor("L2", "b", "gnd", 0.7)
                .resistor("R", "b", "gnd", 300)
                .build();
        Solved<PeriodicState> state = new Solver(n).periodicState(PeriodicSettings.mains(60), null, () -> false);
        assertThat(state)
                .isInstanceOfSatisfying(
                        Solved.Failed.class,
                        f -> assertThat(f.reason().kind()).isEqualTo(NotSolved.Kind.NO_PERIODIC_STATE));
    }

    @Test
    void diodeStraightAcrossASourceCarriesWhatItsLawSays() {
        Network n = Network.builder("gnd")
                .voltage("V", "a", "gnd", new SourceShape.Constant(0.7))
                .port("D", "a", "gnd", JunctionLaw.of(1e-9, 1.5))
                .build();
        assertThat(Solve.rest(n).amps("D")).isCloseTo(1e-9 * Math.expm1(0.7 / (1.5 * 0.0256926)), within(1e-3));
    }

    @Test
    void anAnswerStaysWhatItIsWhenTheSolverIsAskedForAnotherPeriod() {
        Solver solver = new Solver(RandomNetworks.draw(Nature.SUPPLY, 3).network());
        PeriodicState first = Solve.found(solver.periodicState(PeriodicSettings.mains(60), null, () -> false));
        double before = first.volts(1, 0).rms();
        Solve.found(solver.periodicState(PeriodicSettings.mains(20), null, () -> false));
        assertThat(first.volts(1, 0).rms()).isCloseTo(before, within(1e-9 * before));
    }
}
