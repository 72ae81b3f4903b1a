package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
        assertThat(new Solver(b.build()).run(PeriodicSettings.mains(60), 2 / 60.0))
                .isInstanceOf(Solved.Found.class);
    }

    @Test
    void floatingWindingBetweenTwoConductingDiodesIsTold() {
        assertThat(Trial.of(RandomNetworks.draw(Nature.SUPPLY, 1007).network(), 60)
                        .findings())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 4, 10, 15, 60, 103, 120, 5129, 5387})
    void supplyIsSolved(long seed) {
        assertThat(Trial.of(RandomNetworks.draw(Nature.SUPPLY, seed).network(), 60)
                        .refusals())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {5002, 5067})
    void brokenSupplyIsSolved(long seed) {
        Trial.Verdict verdict =
                Trial.of(RandomNetworks.draw(Nature.BROKEN, seed).network(), 60);
        assertThat(verdict.refusals()).isEmpty();
        assertThat(verdict.findings()).isEmpty();
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
