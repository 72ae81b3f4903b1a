package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.mna.RandomNetworks.Nature;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A few seconds of what {@code FuzzCircuits} in the studies does for as long as one likes: random networks, each answer
 * held to Kirchhoff's laws, the parts' own laws, and its period.
 */
class RandomCircuitsTest {
    private static final double PATIENCE_SECONDS = 60;

    static LongStream seeds() {
        return LongStream.range(1008, 1019);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void supplyIsSolvedAndItsAnswersObeyTheLaws(long seed) {
        Trial.Verdict verdict =
                Trial.of(RandomNetworks.draw(Nature.SUPPLY, seed).network(), PATIENCE_SECONDS);

        assertThat(verdict.findings()).isEmpty();
        assertThat(verdict.refusals()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void brokenSupplyIsSolvedOrRefusedWithAReason(long seed) {
        assertThat(Trial.of(RandomNetworks.draw(Nature.BROKEN, seed).network(), PATIENCE_SECONDS)
                        .findings())
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void tangleIsSolvedOrRefusedWithAReason(long seed) {
        assertThat(Trial.of(RandomNetworks.draw(Nature.TANGLE, seed).network(), PATIENCE_SECONDS)
                        .findings())
                .isEmpty();
    }

    @Test
    void sameSeedDrawsTheSameNetwork() {
        for (Nature nature : Nature.values()) {
            RandomNetworks.Drawn one = RandomNetworks.draw(nature, 7);
            RandomNetworks.Drawn again = RandomNetworks.draw(nature, 7);

            assertThat(again.listing(again.network())).isEqualTo(one.listing(one.network()));
        }
    }

    /** A trial that could find nothing would be none: this law says something else when it is asked a second time. */
    @Test
    void partThatDoesNotObeyItsLawIsFound() {
        PortLaw forgetful = new PortLaw() {
            private double latestSeconds;

            @Override
            public int ports() {
                return 1;
            }

            @Override
            public void evaluate(PortPoint at) {
                latestSeconds = Math.max(latestSeconds, at.seconds);
                boolean afterTheRun =
                        latestSeconds > 1.9 / RandomNetworks.HERTZ && at.seconds < 1 / RandomNetworks.HERTZ;
                at.amps[0] = afterTheRun ? 0 : at.volts[0];
                at.siemens[0] = 1;
            }
        };
        Network n = Network.builder("gnd")
                .voltage("V", "a", "gnd", new SourceShape.Constant(1))
                .resistor("R", "a", "b", 1)
                .port("F", "b", "gnd", forgetful)
                .build();

        assertThat(Trial.of(n, PATIENCE_SECONDS).findings())
                .extracting(Trial.Finding::what)
                .containsExactly("run: a part does not obey its law");
    }

    @Test
    void allThreeQuestionsAreAsked() {
        Network n = Network.builder("gnd")
                .voltage("V", "a", "gnd", new SourceShape.Sine(0, 1, RandomNetworks.HERTZ, 0))
                .resistor("R", "a", "gnd", 1)
                .build();

        Trial.Verdict verdict = Trial.of(n, PATIENCE_SECONDS);

        assertThat(verdict.findings()).isEmpty();
        assertThat(verdict.outcomes()).containsOnlyKeys("rest", "periodic", "run");
    }
}
